/** The browser is found or fetched by `src/site`, which can say what it does; an install never fetches one. */
module.exports = { skipDownload: true };

/** Languages that the sheets can be printed in. */
export const languages = ['en', 'es', 'pt'] as const;

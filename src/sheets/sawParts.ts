import type { SawPage } from './sawPage.ts';

/** A page that holds some of the cuts, and where the others are. */
export interface SawPart extends SawPage {
  /** Name of its file. */
  readonly file: string;
  /** All pages and the cuts on each of them; empty where one page holds all. */
  readonly others: readonly {
    readonly file: string;
    readonly floors: readonly { readonly name: string; readonly from: number; readonly to: number }[];
  }[];
}

type Surface = SawPage['surfaces'][number];
type Card = Surface['cards'][number];

/** Letters of drawings and cards that a page may hold beside its type, script and words, so that it stays under 500 kB. */
const ROOM = 400_000;
/** Letters round a card's drawing, and those of a piece on it. */
const LETTERS = { card: 400, piece: 200 } as const;

const letters = ({ drawing, count }: Card) => drawing.length + LETTERS.card + LETTERS.piece * count;

const fileOf = (part: number) => (part === 0 ? 'saw.html' : `saw-${part + 1}.html`);

/** To each card the page that holds it, filled in their order; a page holds the plan of each floor of which it has a card. */
function pagesOf(surfaces: readonly Surface[], room: number): ReadonlyMap<string, number> {
  const pageOf = new Map<string, number>();
  let [page, held] = [0, 0];
  for (const { plan, cards } of surfaces) {
    held += plan.length;
    for (const card of cards) {
      if (held + letters(card) > room && held > plan.length) {
        page += 1;
        held = plan.length;
      }
      held += letters(card);
      pageOf.set(card.id, page);
    }
  }
  return pageOf;
}

/** The plan with its links to cards on other pages leading there. */
function ledOn(plan: string, part: number, pageOf: ReadonlyMap<string, number>): string {
  return plan.replace(/href="#([^"]*)"/g, (all, id: string) => {
    const page = pageOf.get(id) ?? part;
    return page === part ? all : `href="${fileOf(page)}#${id}"`;
  });
}

/**
 * The page beside the saw as one page, or as several where it would be too large to be sent to a phone: each has the plan and
 * some of the cuts, by their numbers.
 */
export function sawParts(page: SawPage, room: number = ROOM): readonly SawPart[] {
  const pageOf = pagesOf(page.surfaces, room);
  const count = Math.max(0, ...pageOf.values()) + 1;
  const parts = Array.from({ length: count }, (_, part) => ({
    file: fileOf(part),
    surfaces: page.surfaces
      .map((surface) => ({
        ...surface,
        plan: ledOn(surface.plan, part, pageOf),
        cards: surface.cards.filter(({ id }) => pageOf.get(id) === part),
      }))
      .filter(({ cards }) => count === 1 || cards.length > 0),
  }));
  const others = parts.map(({ file, surfaces }) => ({
    file,
    floors: surfaces.map(({ name, cards }) => ({
      name,
      from: cards[0]?.number ?? 0,
      to: cards.at(-1)?.number ?? 0,
    })),
  }));
  return parts.map((part) => ({ ...page, ...part, others: count === 1 ? [] : others }));
}

import type { Place } from './place';

type GuidePlace = Extract<Place, { name: 'guide' }>;

const guide = (page: GuidePlace['page'], section: string | null = null): GuidePlace => ({
  name: 'guide',
  page,
  section,
});

const benchSections: Record<string, string> = {
  trim: 'trim',
  legs: 'legs',
  shelves: 'shelves',
  fillers: 'trim',
  sheets: 'sheets-and-stock',
  ways: 'getting-in',
  beds: 'how-it-sits',
};

/** Where the guide tells of what is shown at a place. */
export function guideFor(place: Place): GuidePlace {
  switch (place.name) {
    case 'site': {
      const sections = {
        readings: 'readings',
        scan: 'scanning',
        truth: 'the-verdict',
        holes: 'holes',
        basics: 'your-instruments',
      };
      return guide('site', sections[place.part]);
    }
    case 'bench':
      return guide('bench', benchSections[place.item.split('.')[0]!] ?? null);
    case 'van':
      return guide('work', place.part === 'work' ? 'cautions' : 'what-to-buy');
    case 'client': {
      const sections = { look: null, choices: 'side-by-side', price: 'the-price', send: 'the-quote-and-the-link' };
      return guide('client', sections[place.part]);
    }
    case 'jobs':
      return guide('keeping');
    case 'guide':
      return guide('start');
    case 'link':
      return guide('client', 'the-quote-and-the-link');
  }
}

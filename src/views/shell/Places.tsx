import { addressOf, type Place, usePlace } from '../place';
import styles from './shell.module.css';

const places: readonly { place: Place; words: string; about: string }[] = [
  { place: { name: 'site', part: 'readings' }, words: 'Site', about: 'readings and walls' },
  { place: { name: 'bench', item: 'back' }, words: 'Bench', about: 'panels and templates' },
  { place: { name: 'van', part: 'materials' }, words: 'Van', about: 'materials and work' },
  { place: { name: 'client', part: 'look' }, words: 'Client', about: 'finish and price' },
];

/** The way between the places of the app. */
export function Places() {
  const here = usePlace();
  return (
    <nav className={styles.places} aria-label="Places">
      {places.map(({ place, words, about }) => (
        <a
          key={words}
          href={addressOf(place)}
          className={styles.place}
          aria-current={place.name === here.name ? 'page' : undefined}
        >
          <span className={styles.placeName}>{words}</span>
          <span className={styles.placeAbout}>{about}</span>
        </a>
      ))}
    </nav>
  );
}

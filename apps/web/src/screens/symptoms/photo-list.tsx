import type { ReactNode } from 'react';
import { useStore } from '../../data/store-context.tsx';
import styles from './symptoms.module.css';

interface Props {
  readonly photos: readonly string[];
  /** What a photo is of, for who cannot see it. */
  readonly describe: (number: number) => string;
  readonly children?: (photo: string, number: number) => ReactNode;
}

/** Small photos, each whole one tap below. */
export function PhotoList({ photos, describe, children }: Props) {
  const { served } = useStore();
  if (served === undefined) return null;
  return (
    <ul className={styles.photoList}>
      {photos.map((photo, index) => (
        <li key={photo}>
          <a href={served.photo(photo)} target="_blank" rel="noreferrer">
            <img src={served.photo(photo)} alt={describe(index + 1)} loading="lazy" />
          </a>
          {children?.(photo, index + 1)}
        </li>
      ))}
    </ul>
  );
}

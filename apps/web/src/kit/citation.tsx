import { cite } from '@sorrel/almanac/sources';

/** A publication as it is printed under a figure. Its own piece of the page: the list of all sources is long. */
export default function Citation({ of }: { readonly of: string }) {
  return cite(of);
}

import type { MessageCode } from '@sorrel/almanac/words';
import type { Recommendation } from '@sorrel/engine/plan';

const limy: readonly MessageCode[] = ['print.do-not-lime', 'print.do-not-kitchen', 'print.do-not-gypsum'];

/**
 * What must not be added while the plan stands. Lime beside sulfur cancels (SSSABOOK, memory); ash of treated wood and
 * of coal is refused (OSUASH, NCARCH91); used coffee grounds are not sour (OSU_COFFEE); gypsum has no base (ARK_GH);
 * vinegar and lemon juice wear off (from memory, and the words carry the mark).
 */
export function doNotAdd({ decision, present, target }: Recommendation): readonly MessageCode[] {
  const tooLimy = present !== undefined && present.mean > target.high;
  switch (decision) {
    case 'raise':
      return ['print.do-not-more-lime', 'print.do-not-sulfur', 'print.do-not-treated-ash'];
    case 'lower':
      return ['print.do-not-more-sulfur', 'print.do-not-lime', 'print.do-not-kitchen', 'print.do-not-coffee'];
    case 'leave alone':
      return ['print.do-not-tonic', 'print.do-not-sulfur', 'print.do-not-treated-ash'];
    case 'find out first':
      return ['print.do-not-nothing-yet', 'print.do-not-treated-ash'];
    case 'not practical':
    case 'grow something else':
      return tooLimy ? limy : ['print.do-not-tonic', 'print.do-not-sulfur'];
  }
}

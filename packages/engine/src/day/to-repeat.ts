/** One check of one meter, in the order of the day. */
export interface CheckAt {
  /** Place in the order of everything that meter did. */
  readonly order: number;
  readonly meter: string;
  readonly passed: boolean;
}

export interface ReadAt {
  readonly id: string;
  readonly order: number;
  readonly meter: string;
}

/**
 * Readings that cannot be trusted: those a meter took between a check that failed and the checks on both sides of it that
 * passed. Without a good check before, everything from the start; without one after, everything since.
 *
 * @returns ids in the order of the day
 * @source our judgement (SORREL)
 */
export function toRepeat(checks: readonly CheckAt[], readings: readonly ReadAt[]): readonly string[] {
  const doubtful = new Set<string>();
  const meters = new Set(checks.map(({ meter }) => meter));
  for (const meter of meters) {
    const own = checks.filter((check) => check.meter === meter).sort((a, b) => a.order - b.order);
    for (const [index, check] of own.entries()) {
      if (check.passed) continue;
      const before = own.slice(0, index).findLast(({ passed }) => passed)?.order ?? Number.NEGATIVE_INFINITY;
      const after = own.slice(index + 1).find(({ passed }) => passed)?.order ?? Number.POSITIVE_INFINITY;
      for (const { id, order, meter: by } of readings)
        if (by === meter && order > before && order < after) doubtful.add(id);
    }
  }
  return [...readings]
    .sort((a, b) => a.order - b.order)
    .filter(({ id }) => doubtful.has(id))
    .map(({ id }) => id);
}

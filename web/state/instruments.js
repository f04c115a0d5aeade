/**
 * An instrument as it is first written into the register. One without a certificate takes the error limit of
 * its standard, even between its ends, and says so where the certificate would stand.
 * @param {{kind: string, limit: string, division: string, source: string, known: string} | undefined} common
 * @returns {Record<string, any>}
 */
export function commonInstrument(common) {
  if (!common) return { name: "", coverage: 2 };
  const known = common.known === "read" || common.source.startsWith(common.known) ? "" : `; ${common.known}`;
  const limit = common.limit.endsWith("%") ? { gain: common.limit } : { uncertainty: common.limit };
  return { name: common.kind, kind: common.kind.split(",")[0], ...limit, resolution: common.division, coverage: 1.732, certificate: `none: ${common.source}${known}` };
}

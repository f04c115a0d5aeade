/**
 * What is to be said of the figures saved with a record beside those that stand on the sheet.
 * @param {any} summary as the server sends it
 * @returns {{kind: "agrees" | "errors" | "differs" | "unsaved", line: string, more: string, differences: {name: string, clause: string, text: string}[]}}
 */
export function integrity(summary) {
  const saved = summary.agrees;
  const counted = counts(summary);
  if (!saved) {
    return { kind: "unsaved", line: "Figures not saved yet", more: [counted, "Nothing to compare with."].filter(Boolean).join(". "), differences: [] };
  }
  const library = saved.library ? `Library ${saved.library}.` : "";
  if (saved.agrees && (summary.errors ?? 0) > 0) {
    return { kind: "errors", line: counted, more: ["The other figures agree with the readings.", library].filter(Boolean).join(" "), differences: [] };
  }
  if (saved.agrees) {
    return { kind: "agrees", line: "Figures agree with the readings", more: [counted ? `${counted}.` : "", library].filter(Boolean).join(" "), differences: [] };
  }
  const differences = (saved.differences ?? []).map((one) => ({ name: one.name, clause: one.clause ?? "", text: [one.what, `saved ${one.saved || "nothing"}, now ${one.now || "nothing"}`].filter(Boolean).join(": ") }));
  const many = differences.length;
  const line = many === 0 ? "Figures saved differ from these" : `${many} ${many === 1 ? "figure differs" : "figures differ"} from those saved`;
  return { kind: "differs", line, more: [saved.why ?? "", counted].filter(Boolean).join(" "), differences };
}

/** What is in error and what waits, in words; empty where nothing does. @param {any} summary */
export function counts(summary) {
  const errors = summary.errors ?? 0;
  const waiting = summary.waiting ?? 0;
  const parts = [];
  if (errors > 0) parts.push(`${errors} ${errors === 1 ? "line" : "lines"} in error`);
  if (waiting > 0) parts.push(`${waiting} ${waiting === 1 ? "value" : "values"} waiting`);
  return parts.join(", ");
}

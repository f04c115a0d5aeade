/**
 * What was typed in an edit that the record refused, by the fields that hold it: it is put back there, so
 * that it can be mended and is not lost.
 * @param {{op: string, at?: string, value?: any} | undefined} edit
 * @returns {{key: string, text: string}[]}
 */
export function typedBack(edit) {
  if (!edit || edit.op !== "put" || !edit.at) return [];
  const taken = edit.at.match(/^\/readings\/(\d+)\/entries\/(\d+)\/taken$/);
  if (taken && Array.isArray(edit.value)) {
    return edit.value.map((text, repeat) => ({ key: `${taken[1]}/${taken[2]}/${repeat}`, text: String(text) }));
  }
  return typeof edit.value === "string" ? [{ key: edit.at, text: edit.value }] : [];
}

/** The typed text as the message says it, where no field holds it any more. @param {{text: string}[]} typed */
export function quoted(typed) {
  const text = typed.map((one) => one.text).join("  ").trim();
  return text === "" ? "" : `You wrote: ${text.length > 2000 ? `${text.slice(0, 2000)} …` : text}`;
}

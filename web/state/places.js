/**
 * Where a value is to be put that is meant for a place of a clause, if what holds the place is not there
 * yet: then all that is missing is made with it.
 * @param {any} source the clause as the record has it
 * @param {string} pointer JSON pointer
 * @param {any} value
 * @returns {{at: string, value: any}}
 */
export function placed(source, pointer, value) {
  const steps = pointer.slice(1).split("/");
  let here = source;
  for (let depth = 0; depth < steps.length - 1; depth++) {
    const next = here?.[steps[depth]];
    if (next === undefined || next === null) {
      const made = steps.slice(depth + 1).reduceRight((inner, step) => within(step, inner), value);
      return { at: `/${steps.slice(0, depth + 1).join("/")}`, value: made };
    }
    here = next;
  }
  return { at: pointer, value };
}

/**
 * What stands at a place of a clause.
 * @param {any} source
 * @param {string} pointer
 * @returns {any} undefined where there is nothing
 */
export function at(source, pointer) {
  return pointer.slice(1).split("/").reduce((here, step) => here?.[step], source);
}

/** A mark that none of a list has yet: r1, r2 ... @param {string} stem @param {readonly any[]} list */
export function freshMark(stem, list) {
  const taken = new Set(list.map((one) => one.id));
  for (let n = list.length + 1; ; n++) {
    if (!taken.has(`${stem}${n}`)) return `${stem}${n}`;
  }
}

/** @param {string} step @param {any} inner */
function within(step, inner) {
  if (!/^\d+$/.test(step)) return { [step]: inner };
  return [...Array.from({ length: Number(step) }, () => ({})), inner];
}

/**
 * Labels of the page that read otherwise in the two countries. Common practice, no source. What a person
 * wrote is never said otherwise, and words that both use are not here.
 */
const LABELS = {
  worn: ["Worn", "Service"],
  fitsEmpty: [
    "No fit yet. Press Enter and name one: the two parts, the limits when new and when worn, whose limits they are, and the value measured, such as  bore - journal.",
    "No fit yet. Press Enter and name one: the two parts, the limits when new and the service limits, whose limits they are, and the value measured, such as  bore - journal.",
  ],
  fitsHint: [
    "A bare number is in the unit of the row. What the worn limits leave open stays as new.",
    "A bare number is in the unit of the row. What the service limits leave open stays as new.",
  ],
  fits: ["fits", "limits"],
};

/**
 * A label in the words of the sheet's country.
 * @param {keyof typeof LABELS} key
 * @param {string | undefined} terms setting of the record: "american", all else is British
 */
export function label(key, terms) {
  return LABELS[key][terms === "american" ? 1 : 0];
}

/** Every label in both words, for the test that they differ. */
export const labels = Object.entries(LABELS);

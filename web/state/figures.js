/** @import { FigureView, LimitView } from "./shapes.js" */

/**
 * What stands in the result and limits columns for a figure: itself, or the station that is judged worst.
 * @param {FigureView | undefined} figure
 * @returns {{shown: any, of: string, limits: LimitView[], none: string}}
 */
export function answerOf(figure) {
  if (!figure) return { shown: undefined, of: "", limits: [], none: "" };
  if (figure.state === "error") return { shown: undefined, of: "", limits: [], none: "no result" };
  if (figure.state === "waiting") return { shown: undefined, of: "", limits: [], none: "waiting" };
  const elements = figure.elements ?? [];
  if (elements.length === 0 && !figure.count) {
    return { shown: figure, of: "", limits: figure.limits ?? [], none: figure.state === "working" ? ["working", figure.progress].filter(Boolean).join(", ") : "" };
  }
  const worst = elements[figure.worstElement ?? -1];
  if (worst) {
    const shown = { ...worst, unit: worst.unit ?? figure.unit, kind: "quantity", state: figure.state };
    return { shown, of: worst.field ? worst.field.replaceAll("_", " ") : labelsOf(worst.labels), limits: worst.limits ?? figure.limits ?? [], none: "" };
  }
  if (figure.value) return { shown: figure, of: "", limits: figure.limits ?? [], none: "" };
  return { shown: { value: `${figure.count ?? elements.length} values`, kind: "text", state: figure.state }, of: "", limits: [], none: "" };
}

/** Labels of a station as one reads them: "cylinder 3, top". @param {Record<string, string> | undefined} labels */
export function labelsOf(labels) {
  return Object.entries(labels ?? {})
    .map(([axis, label]) => (/^[\d.]+$/.test(String(label)) ? `${axis.replace(/^.*\./, "")} ${label}` : String(label)))
    .join(", ");
}

/** A live figure inside a note, or one field of it. @param {FigureView | undefined} figure @param {string} [field] */
export function liveText(figure, field = "") {
  if (!figure || figure.state === "error" || figure.state === "waiting") return "";
  const shown = field === "" ? figure : figure.elements?.find((element) => element.field === field);
  if (!shown?.value) return "";
  return shown.unit ? `${shown.value}${shown.unit === "°" ? "" : " "}${shown.unit}` : shown.value;
}

/**
 * The lines that a figure waits on, in words: "on bore, journal".
 * @param {FigureView | undefined} figure
 * @param {(name: string) => FigureView | undefined} find
 */
export function waitsOn(figure, find) {
  const names = (figure?.waitingOn ?? []).map((one) => find(one.name)?.title ?? one.name);
  return names.length > 0 ? `on ${names.join(", ")}` : "";
}

/** Whether a clause deserves a look: any verdict but within. @param {string} worst */
export function isNotWithin(worst) {
  return worst === "outside" || worst === "not proven";
}

/** Where a part of an uncertainty comes from, its subject named once. @param {{subject?: string, words?: string}} one */
export function doubtFrom({ subject = "", words = "" }) {
  return words.includes(subject) ? words : [subject, words].filter(Boolean).join(", ");
}

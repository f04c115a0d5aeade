import { calibration } from "./readings.js";

/**
 * One of the statements that a value rests on.
 * @typedef {object} Statement
 * @property {number} number in the order of the chain, from 1
 * @property {any} node as the server tells it
 * @property {number[]} from numbers of the statements it rests on itself
 */

/**
 * What a value comes from, as numbered statements: along each thread down to the readings, then the next
 * thread. What several rest on is stated once.
 * @param {any} tree of the value
 * @returns {{from: number[], statements: Statement[]}} what the value itself rests on, and all
 */
export function statementsOf(tree) {
  const statements = [];
  const known = new Map();
  const state = (node) => {
    const key = node.name || JSON.stringify([node.cell, node.line, node.text]);
    let one = known.get(key);
    if (!one) {
      one = { number: statements.length + 1, node, from: [] };
      known.set(key, one);
      statements.push(one);
    }
    // a value that was met before may have been told without what it comes from
    if (one.from.length === 0) one.from = numbers(node.from ?? [], state);
    return one.number;
  };
  return { from: numbers(tree?.from ?? [], state), statements };
}

/** @param {any[]} nodes @param {(node: any) => number} state */
function numbers(nodes, state) {
  return [...new Set(nodes.map(state))];
}

const DONE = { reading: "read", input: "given", solved: "solved for", broken: "in error", computed: "worked out" };

/** How a value was come by, as its statement begins. @param {any} node */
export function comeBy(node) {
  return DONE[node.sort] ?? DONE.computed;
}

/** What was measured, or whose value it is. @param {any} node */
export function authorityOf(node) {
  if (node.sort === "reading") return node.text ?? "";
  return node.sort === "input" ? (node.given ?? "") : "";
}

/**
 * The instruments of a reading with their calibration, one that was overdue on the day told as such.
 * @param {any} node
 * @param {string} day ISO date
 * @returns {{text: string, overdue: boolean}[]}
 */
export function instrumentsOf(node, day) {
  return (node.instruments ?? []).map((one) => {
    const { text, overdue } = calibration(one, day);
    return { text: [`${one.name ?? ""} ${one.id}`.trim(), text].filter(Boolean).join(", "), overdue };
  });
}

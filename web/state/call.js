/**
 * The call that a place of a text stands in: its name, and the argument at the place by name or position.
 * @param {string} text
 * @param {number} offset
 * @returns {{name: string, argument: string, position: number} | null}
 */
export function callAt(text, offset) {
  const from = text.lastIndexOf("\n", offset - 1) + 1;
  const line = text.slice(from, offset);
  const open = [];
  let quoted = false;
  for (let at = 0; at < line.length; at++) {
    const sign = line[at];
    if (sign === '"') quoted = !quoted;
    if (quoted) continue;
    if (line.startsWith("--", at)) return null;
    if (sign === "(") open.push({ name: /[\p{L}_][\p{L}\p{N}_]*$/u.exec(line.slice(0, at))?.[0] ?? "", position: 0, start: at + 1 });
    else if (sign === "[") open.push({ name: null, position: 0, start: at + 1 });
    else if (sign === ")" || sign === "]") open.pop();
    else if (sign === "," && open.length > 0) Object.assign(open[open.length - 1], { position: open[open.length - 1].position + 1, start: at + 1 });
  }
  // brackets of an expression or a list belong to the argument they stand in
  const call = open.findLast((one) => one.name);
  if (!call) return null;
  const argument = /^\s*([\p{L}_][\p{L}\p{N}_]*)\s*:/u.exec(line.slice(call.start))?.[1] ?? "";
  return { name: call.name, argument, position: call.position };
}

/**
 * Which of the arguments of a calculation a call is at.
 * @param {readonly {name: string}[]} args in their order
 * @param {{argument: string, position: number}} call
 */
export function argumentAt(args, call) {
  return call.argument === "" ? args[call.position] : args.find((one) => one.name === call.argument);
}

const GREEK = new Map(Object.entries({
  alpha: "α", beta: "β", gamma: "γ", delta: "δ", epsilon: "ε", zeta: "ζ", eta: "η", theta: "θ", kappa: "κ", lambda: "λ",
  mu: "μ", nu: "ν", xi: "ξ", rho: "ρ", sigma: "σ", tau: "τ", phi: "φ", chi: "χ", psi: "ψ", omega: "ω", Delta: "Δ",
  Theta: "Θ", Lambda: "Λ", Sigma: "Σ", Phi: "Φ", Psi: "Ψ", Omega: "Ω",
}));

/**
 * A name as it is set: its first part, the rest as an index. `lash_hot` is lash with index hot.
 * @param {string} name of the working language; fields after points stay with the index
 * @returns {{base: string, index: string}}
 */
export function typesetName(name) {
  const [head, ...fields] = name.split(".");
  const [base, ...rest] = head.split("_").filter((part) => part !== "");
  const index = [rest.join(" "), ...fields].filter((part) => part !== "").join(", ");
  return { base: GREEK.get(base) ?? base ?? name, index };
}

/** A name as it is said aloud. @param {string} name */
export function spokenName(name) {
  return name.replaceAll("_", " ").replaceAll(".", ", ");
}

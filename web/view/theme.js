import { remember, remembered } from "./remembered.js";

/** Paper or blueprint: as chosen here before, else as the system says. */
export function startTheme() {
  const root = document.documentElement;
  const before = remembered("ink", "");
  if (before === "paper" || before === "blueprint") root.dataset.ink = before;
  for (const button of document.querySelectorAll("[data-theme]")) {
    button.addEventListener("click", () => {
      root.dataset.ink = isDark(root) ? "paper" : "blueprint";
      remember("ink", root.dataset.ink);
    });
  }
}

/** @param {HTMLElement} root */
function isDark(root) {
  return root.dataset.ink ? root.dataset.ink === "blueprint" : matchMedia("(prefers-color-scheme: dark)").matches;
}

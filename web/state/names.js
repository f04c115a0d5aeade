/** A name as it is said aloud. @param {string} name */
export function spokenName(name) {
  return name.replaceAll("_", " ").replaceAll(".", ", ");
}

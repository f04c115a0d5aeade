package endfloat.shafts;

/** One of the two planes in which a shaft bends. */
enum ShaftPlane {
  /** That of the forces. */
  FORCE,
  /** That of the side forces, a quarter turn on. */
  SIDE
}

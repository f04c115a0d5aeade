package endfloat.alignment;

import endfloat.definition.Calculates;
import endfloat.definition.Default;
import endfloat.definition.In;
import endfloat.definition.Range;
import endfloat.definition.RefusedException;
import endfloat.units.Uncertain;

/** How a toothed coupling that runs out of line drives its shaft endways. */
public final class CouplingThrust {
  private CouplingThrust() {}

  /** Whether the teeth follow the tilt by slipping. */
  public enum State {
    SLIPS,
    STICKS,
    NOT_DETERMINED
  }

  /** Which way the driven shaft is pushed. */
  public enum Direction {
    TOWARDS_THE_DRIVEN_END,
    TOWARDS_THE_DRIVER,
    NONE,
    NOT_DETERMINED
  }

  /**
   * What the coupling does to the driven shaft. Forces count positive from driver to driven.
   *
   * @param low least thrust on the driven shaft, with its sign
   * @param high greatest thrust on it
   * @param most size of the thrust at most
   * @param direction which way, or not determined
   * @param state slips or sticks
   * @param frictionMoment (2/π) μ |T| / cos α, by which an evenly loaded slipping coupling bends
   *     both shafts: in the plane of the coupling, about the axis a right angle from the tilt axis;
   *     at the greatest friction taken
   * @param holds μ |T| / (r cos α), axial force that the coupling can hold while it sticks or is
   *     aligned, either way: a bound
   * @param creepResistance while it slips, against a slow endways creep
   * @param meanCos mean of cos φ over the load
   * @param meanSign mean of the sign of cos φ over the load
   * @param share the sharing of load that was used, in words
   */
  public record Thrust(
      @In("N") double low,
      @In("N") double high,
      @In("N") double most,
      Direction direction,
      State state,
      @In("N.m") double frictionMoment,
      @In("N") double holds,
      @In("N") Uncertain creepResistance,
      @In("1") Uncertain meanCos,
      @In("1") Uncertain meanSign,
      String share) {}

  /**
   * Thrust of a coupling out of line on its driven shaft: {@code F_z = (|T|/r) [s_T tan θ ⟨cos φ⟩ −
   * (μ/cos α) s_ω s_θ ⟨sign cos φ⟩]}.
   *
   * <p>z runs from driver to driven; torque (on the driven shaft), speed and tilt count positive by
   * the right hand about z and about the tilt axis, an axis in the plane of the coupling; φ counts
   * from that axis. The means are over the load of the teeth. Shared evenly both are zero: no net
   * thrust, only a moment of friction. A thrust needs load on one side, so without a share the
   * answer is 0 up to the bound and no direction.
   *
   * <p>The teeth slip if tilt_stiffness × θ exceeds {@code (2/π) μ |T| / cos α}; otherwise they
   * stick, the shafts bend at every turn and there is no such thrust. While they slip, the
   * resistance to a slow creep v is only {@code holds × (2/π) asin(v/(ω r θ))}: a coupling out of
   * line does not lock endways, an aligned one does.
   *
   * @param torque T, on the driven shaft
   * @param pitchRadius r, at which the teeth bear
   * @param tilt θ, angle between the axes, signed; coupling_misalignment gives it
   * @param speed ω, signed
   * @param friction μ; not given: 0.05 to 0.20
   * @param pressureAngle α of the teeth
   * @param share part of the load on the half of the teeth about φ = 0: 0.5 shared evenly, 1 all on
   *     that side; not given and no shares: not known
   * @param shares load of each tooth, evenly spaced, in any measure; instead of share
   * @param firstTooth φ of the first of them
   * @param tiltStiffness of the shafts and bearings against the tilt at the coupling; not given:
   *     slip or stick is not determined
   * @param creep v, endways speed against which the resistance is wanted
   * @return interval, direction and state
   */
  @Calculates(
      source =
          "derived: normal load and Coulomb friction on teeth that slide endways by the tilt at every"
              + " turn",
      cautions = {
        "A bound by friction, not a prediction; where direction reads not determined, no sign may be"
            + " put on it.",
        SplineForce.FRICTION,
        "Stuck teeth bend both shafts at every turn: look for fatigue."
      },
      terms = {"muff", "spline", "toothed coupling", "axial thrust", "misalignment", "end thrust"})
  public static Thrust couplingThrust(
      @In("N.m") double torque,
      @In("mm") @Range("> 0 mm") double pitchRadius,
      @In("mrad") @Range("-100 mrad .. 100 mrad") double tilt,
      @In("rpm") double speed,
      @In("1") @Range("0 .. 1") @Default(Default.NOT_GIVEN) double friction,
      @In("deg") @Range("0 deg .. 45 deg") @Default("0 deg") double pressureAngle,
      @In("1") @Range("0 .. 1") @Default(Default.NOT_GIVEN) double share,
      @In("1") @Range(">= 0") @Default("[]") double[] shares,
      @In("deg") @Default("0 deg") double firstTooth,
      @In("N.m/rad") @Range(">= 0 N.m/rad") @Default(Default.NOT_GIVEN) double tiltStiffness,
      @In("mm/s") @Range(">= 0 mm/s") @Default(Default.NOT_GIVEN) double creep) {
    if (!Double.isNaN(share) && shares.length > 0) {
      throw new RefusedException("give share or shares, not both");
    }
    SplineForce.Friction mu = SplineForce.Friction.of(friction);
    double holds = SplineForce.bound(torque, pitchRadius, mu.high(), pressureAngle);
    double moment = momentOfFriction(torque, mu.high(), pressureAngle);
    State state = state(torque, tilt, speed, tiltStiffness, mu, pressureAngle);
    ToothShares loads =
        shares.length > 0
            ? ToothShares.ofTeeth(shares, firstTooth)
            : Double.isNaN(share) ? null : ToothShares.ofHalf(share);
    double low;
    double high;
    if (state == State.STICKS) {
      low = 0;
      high = 0;
    } else if (loads == null) {
      // one tooth alone: driving, the pull of the tilt works against the friction, so that the most
      // is the friction of a tooth without pull or, where that is small, the pull less the friction
      boolean driving = torque * speed >= 0;
      double pull = Math.abs(StrictMath.tan(tilt));
      double cos = StrictMath.cos(pressureAngle);
      high =
          Math.abs(torque)
              / pitchRadius
              * (driving
                  ? Math.max(mu.high() / cos, pull - mu.low() / cos)
                  : pull + mu.high() / cos);
      low = -high;
    } else {
      double one = thrust(torque, pitchRadius, tilt, speed, mu.low(), pressureAngle, loads);
      double other = thrust(torque, pitchRadius, tilt, speed, mu.high(), pressureAngle, loads);
      low = Math.min(one, other);
      high = Math.max(one, other);
      if (state == State.NOT_DETERMINED) {
        low = Math.min(0, low);
        high = Math.max(0, high);
      }
    }
    return new Thrust(
        low,
        high,
        Math.max(Math.abs(low), Math.abs(high)),
        direction(low, high),
        state,
        moment,
        holds,
        creepResistance(state, creep, speed * pitchRadius * tilt, holds),
        loads == null ? unknown() : new Uncertain(loads.meanCos(), 0),
        loads == null ? unknown() : new Uncertain(loads.meanSign(), 0),
        loads == null ? "not known: 0 up to the bound" : loads.said());
  }

  private static double momentOfFriction(double torque, double friction, double pressureAngle) {
    return 2 / StrictMath.PI * friction * Math.abs(torque) / StrictMath.cos(pressureAngle);
  }

  private static State state(
      double torque,
      double tilt,
      double speed,
      double tiltStiffness,
      SplineForce.Friction mu,
      double pressureAngle) {
    if (tilt == 0 || speed == 0) {
      return State.STICKS;
    }
    if (Double.isNaN(tiltStiffness)) {
      return State.NOT_DETERMINED;
    }
    double drive = tiltStiffness * Math.abs(tilt);
    if (drive > momentOfFriction(torque, mu.high(), pressureAngle)) {
      return State.SLIPS;
    }
    return drive <= momentOfFriction(torque, mu.low(), pressureAngle)
        ? State.STICKS
        : State.NOT_DETERMINED;
  }

  private static double thrust(
      double torque,
      double radius,
      double tilt,
      double speed,
      double friction,
      double pressureAngle,
      ToothShares loads) {
    return Math.abs(torque)
        / radius
        * (Math.signum(torque) * StrictMath.tan(tilt) * loads.meanCos()
            - friction
                / StrictMath.cos(pressureAngle)
                * Math.signum(speed)
                * Math.signum(tilt)
                * loads.meanSign());
  }

  private static Direction direction(double low, double high) {
    if (low == 0 && high == 0) {
      return Direction.NONE;
    }
    if (low < 0 && high > 0) {
      return Direction.NOT_DETERMINED;
    }
    return high > 0 ? Direction.TOWARDS_THE_DRIVEN_END : Direction.TOWARDS_THE_DRIVER;
  }

  private static Uncertain creepResistance(
      State state, double creep, double slidingSpeed, double holds) {
    if (Double.isNaN(creep)) {
      return Uncertain.absent("give creep, the endways speed, to have the resistance to it");
    }
    if (state != State.SLIPS) {
      return Uncertain.absent(
          "only a coupling that slips gives way to a creep; one that sticks holds up to holds");
    }
    double ratio = Math.min(1, creep / Math.abs(slidingSpeed));
    return new Uncertain(holds * 2 / StrictMath.PI * StrictMath.asin(ratio), 0);
  }

  private static Uncertain unknown() {
    return Uncertain.absent("the sharing of the load is not known: give share or shares");
  }
}

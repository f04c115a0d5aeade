package endfloat.units;

/**
 * The uncertainty that the scatter of the data leaves in several results of one calculation, which
 * vary together: as parts of independent roots.
 *
 * @param parts one row a numeric result in order, one column a root: how far the result moves with
 *     one standard uncertainty of it [SI]
 * @param degreesOfFreedom that the scatter was estimated with
 */
@SuppressWarnings("ArrayRecordComponent") // made anew for each call and altered by nobody
public record Scatter(double[][] parts, double degreesOfFreedom) {}

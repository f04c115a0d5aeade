/**
 * What columns of measured values tell: mean and spread, a straight line through points with its
 * uncertainty, whether two columns go together. Start with {@link
 * endfloat.statistics.StraightLine}.
 */
package endfloat.statistics;

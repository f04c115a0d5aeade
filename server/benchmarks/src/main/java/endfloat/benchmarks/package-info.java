/**
 * How fast Endfloat is, as ratios: each task runs in the same process as a loop written by hand,
 * which is the limit, and a general library, which is the peer. Start with {@code run} beside the
 * sources.
 */
package endfloat.benchmarks;

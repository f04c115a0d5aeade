/**
 * What gauges and indicators really show: cosine errors, bore gauges off the diameter, lobed forms,
 * roundness and straightness. Start with {@link endfloat.instruments.Roundness}.
 */
package endfloat.instruments;

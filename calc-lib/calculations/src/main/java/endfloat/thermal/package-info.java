/** What heat does to lengths and clearances. Start with {@link endfloat.thermal.ThermalGrowth}. */
package endfloat.thermal;

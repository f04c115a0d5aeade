/**
 * A sheet on paper: the report as one file that opens by itself for ever. It draws the same views
 * of the sheet that the page draws, so that no number is written twice. Open {@link
 * endfloat.report.ReportPage} first.
 */
package endfloat.report;

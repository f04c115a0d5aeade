/**
 * The same markup as PDF: text stays text, formulas and pictures are drawn by the program itself,
 * and the record goes along inside. No class of here is loaded before a PDF is asked for. Open
 * {@link endfloat.report.pdf.PdfReport} first.
 */
package endfloat.report.pdf;

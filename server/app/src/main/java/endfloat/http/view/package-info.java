/**
 * What the page is told: clauses, lines, figures and limits as JSON, every number as the text that
 * is shown, so that the page formats nothing. Start with {@link endfloat.http.view.SheetView}.
 */
package endfloat.http.view;

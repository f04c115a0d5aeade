/**
 * Open sheets over WebSocket: an edit is kept, acknowledged to its author, and the changed clauses
 * and figures are told to every page that has the sheet open. Start with {@link
 * endfloat.http.live.LiveSheet}.
 */
package endfloat.http.live;

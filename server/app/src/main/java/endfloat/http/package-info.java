/**
 * The server: pages, records and live sheets over HTTP and WebSocket, on this machine only unless
 * told otherwise. It turns requests into calls and answers into JSON, and computes nothing. Start
 * with {@link endfloat.http.Server}.
 */
package endfloat.http;

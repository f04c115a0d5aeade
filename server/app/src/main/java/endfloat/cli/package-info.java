/**
 * The commands: serving the shelf, and everything that is done without a page. The only place that
 * prints. Start with {@link endfloat.cli.Endfloat}.
 */
package endfloat.cli;

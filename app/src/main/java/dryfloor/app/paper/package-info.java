/**
 * What is handed over on paper or as a page: {@link dryfloor.app.paper.Report} is all that it says,
 * as values, {@link dryfloor.app.paper.ReportWords} puts one analysis into it, and {@link
 * dryfloor.app.paper.HtmlPages}, {@link dryfloor.app.paper.WorksheetCsv} and the other writers give
 * it a form. Templates of pages are in {@code src/main/jte}; they become classes when the program
 * is built and hold no words that depend on the answer. Nothing is computed here, and nothing from
 * a drawing reaches a page without being escaped: a picture is the only markup that a template may
 * pass on, and {@link dryfloor.app.paper.Picture} is made by the drawing code alone.
 */
@NullMarked
package dryfloor.app.paper;

import org.jspecify.annotations.NullMarked;

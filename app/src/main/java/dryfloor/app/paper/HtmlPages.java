package dryfloor.app.paper;

import dryfloor.model.file.VisibleText;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.TemplateOutput;
import gg.jte.output.StringOutput;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A report as one HTML file that needs nothing else: no network, no script, no other file. It is
 * well-formed XML at the same time.
 */
public final class HtmlPages {

  private static final TemplateEngine PAGES =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "dryfloor.app.paper.page");

  private HtmlPages() {}

  /** The text of the file. */
  public static String of(Report report) {
    return write("report.jte", Map.of("report", report, "style", PageStyle.page()));
  }

  /** Two versions of a drawing as such a file. */
  public static String of(Comparison comparison) {
    return write("comparison.jte", Map.of("comparison", comparison, "style", PageStyle.page()));
  }

  /** A page from a template and what stands in it. */
  static String write(String template, Map<String, Object> values) {
    TemplateOutput output = new StringOutput();
    PAGES.render(template, values, output);
    return withoutTurns(output.toString());
  }

  /** Marks that turn the direction of all that follows are spelled out, as everywhere. */
  private static String withoutTurns(String page) {
    if (VisibleText.withoutTurns(page).equals(page)) {
      return page;
    }
    return page.codePoints()
        .mapToObj(
            c -> {
              String sign = Character.toString(c);
              String seen = VisibleText.withoutTurns(sign);
              return seen.equals(sign) ? sign : seen.replace("<", "&lt;").replace(">", "&gt;");
            })
        .collect(Collectors.joining());
  }
}

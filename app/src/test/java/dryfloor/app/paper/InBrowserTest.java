package dryfloor.app.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dryfloor.app.sample.ShippedDrawing;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page as a browser shows it; only where a browser is installed. */
class InBrowserTest {

  private static final List<Integer> PHONE_TO_DESK = List.of(360, 800, 1280);

  @TempDir private Path folder = Path.of("");

  @Test
  void thePageStandsAloneAndFitsPhoneAndDesk() throws IOException, InterruptedException {
    Optional<Path> program = Browser.find();
    assumeTrue(program.isPresent(), "no Chromium is installed");
    Path page = Files.writeString(folder.resolve("page.html"), HtmlPages.of(report()));
    try (Browser browser = Browser.start(program.get(), folder.resolve("profile"))) {
      for (int width : PHONE_TO_DESK) {
        browser.open(page, width);
        assertThat(browser.value("document.documentElement.scrollWidth").asInt())
            .as("width of the page on a screen of " + width)
            .isLessThanOrEqualTo(width);
        assertThat(browser.events("Network.requestWillBeSent"))
            .extracting(event -> event.get("params").get("request").get("url").asString())
            .allMatch(url -> url.startsWith("file:") || url.startsWith("data:"));
        assertThat(browser.events("Log.entryAdded")).isEmpty();
        assertThat(browser.events("Runtime.consoleAPICalled")).isEmpty();
        assertThat(browser.events("Runtime.exceptionThrown")).isEmpty();
      }
      assertThat(ground(browser, "light")).isNotEqualTo(ground(browser, "dark"));
      ownersPageIsOneSheet(browser);
    }
  }

  private static void ownersPageIsOneSheet(Browser browser)
      throws IOException, InterruptedException {
    String printed =
        browser
            .ask("Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", true))
            .get("data")
            .asString();
    try (PDDocument document = Loader.loadPDF(Base64.getDecoder().decode(printed))) {
      PDFTextStripper second = new PDFTextStripper();
      second.setStartPage(2);
      second.setEndPage(2);
      assertThat(second.getText(document)).startsWith("Emergency card");
      assertThat(document.getNumberOfPages()).isBetween(10, 40);
    }
  }

  private static String ground(Browser browser, String theme) throws InterruptedException {
    browser.ask(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", theme))));
    return browser.value("getComputedStyle(document.body).backgroundColor").asString();
  }

  private static Report report() {
    return SampleReport.of(ShippedDrawing.read("first-look/as-drawn.json"), Units.METRIC);
  }
}

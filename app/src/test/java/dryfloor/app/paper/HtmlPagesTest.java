package dryfloor.app.paper;

import static org.assertj.core.api.Assertions.assertThat;

import dryfloor.model.unit.Units;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** One file, nothing loose in it, and tables that can be read aloud. */
class HtmlPagesTest {

  private static final String SCRIPT = "<script>alert(1)</script>";
  private static final String TURNED = "sump\u202Etxt";

  @ParameterizedTest
  @ValueSource(
      strings = {
        SCRIPT,
        "\\\"><img src=x onerror=alert(1)>",
        "=cmd|'/c calc'!A0",
        "\\\"],",
        TURNED
      })
  void namesOfUsersStayWords(String name) throws Exception {
    Document page = parsed(page(name));
    assertThat(elements(page, "script")).isEmpty();
    assertThat(elements(page, "img")).isEmpty();
    String shown = name.replace("\\\"", "\"").replace("\u202E", "<U+202E>");
    assertThat(elements(page, "h1").getFirst().getTextContent()).isEqualTo(shown);
    assertThat(page.getDocumentElement().getTextContent()).contains(shown + " (");
  }

  @Test
  void namesWrittenFromTheRightStandApart() throws Exception {
    String hebrew = "\u05DE\u05D9\u05DB\u05DC";
    Document page = parsed(page(hebrew));
    assertThat(elements(page, "bdi")).extracting(Element::getTextContent).contains(hebrew);
  }

  @Test
  void thePageNeedsNothingElse() throws Exception {
    Document page = parsed(page("Display"));
    for (Element element : elements(page, "*")) {
      assertThat(element.getAttribute("src")).isEmpty();
      assertThat(element.getAttribute("href")).isIn("", "data:,");
      assertThat(element.getAttribute("style")).isEmpty();
    }
    assertThat(elements(page, "style"))
        .allSatisfy(style -> assertThat(style.getTextContent()).doesNotContain("@import", "http"));
  }

  @Test
  void everyTableHasHeadsAndEveryPictureATitle() throws Exception {
    Document page = parsed(page("Display"));
    assertThat(elements(page, "table"))
        .isNotEmpty()
        .allSatisfy(table -> assertThat(table.getElementsByTagName("th").getLength()).isPositive());
    assertThat(elements(page, "th")).allMatch(head -> !head.getAttribute("scope").isEmpty());
    assertThat(elements(page, "svg"))
        .isNotEmpty()
        .allMatch(svg -> svg.getElementsByTagName("title").getLength() == 1);
  }

  @Test
  void idsOnAPageAreNotGivenTwice() throws Exception {
    List<String> ids =
        elements(parsed(page("Display")), "*").stream()
            .filter(element -> !element.getTagName().equals("pattern"))
            .map(element -> element.getAttribute("id"))
            .filter(id -> !id.isEmpty())
            .toList();
    assertThat(ids).doesNotHaveDuplicates();
  }

  @Test
  void noTemplatePassesAnythingOnUnescaped() throws IOException {
    try (Stream<Path> templates = Files.list(Path.of("src", "main", "jte"))) {
      assertThat(templates.toList())
          .isNotEmpty()
          .allSatisfy(template -> assertThat(Files.readString(template)).doesNotContain("$unsafe"));
    }
  }

  @Test
  void onAPhoneThePictureScrollsAndItsLettersAreNinePixelsHigh() throws Exception {
    String page = page("Shop");
    Matcher narrowest = Pattern.compile("svg \\{[^}]*min-width: (\\d+)rem").matcher(page);
    assertThat(narrowest.find()).isTrue();
    Document document = parsed(page);
    Element picture = elements(document, "svg").getFirst();

    double zoom =
        16
            * Double.parseDouble(narrowest.group(1))
            / Double.parseDouble(picture.getAttribute("width"));

    assertThat(page).contains(".p-picture, .p-scroll { overflow-x: auto }");
    assertThat(elements(document, "text"))
        .filteredOn(text -> picture.isSameNode(text.getParentNode()))
        .isNotEmpty()
        .allMatch(text -> zoom * Double.parseDouble(text.getAttribute("font-size")) >= 9);
  }

  private static String page(String name) {
    return HtmlPages.of(SampleReport.of(SampleReport.named(name), Units.METRIC));
  }

  private static Document parsed(String page)
      throws ParserConfigurationException, SAXException, IOException {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(page)));
  }

  private static List<Element> elements(Document page, String name) {
    NodeList found = page.getElementsByTagName(name);
    return IntStream.range(0, found.getLength())
        .mapToObj(found::item)
        .filter(Element.class::isInstance)
        .map(Element.class::cast)
        .toList();
  }
}

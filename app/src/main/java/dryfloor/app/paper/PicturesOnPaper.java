package dryfloor.app.paper;

import com.openhtmltopdf.extend.FSDOMMutator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Makes pictures ready for a PDF. Its tags look for the words of a picture in an attribute. Their
 * size is worked out here, as large as their place allows, because a style sheet can't keep the
 * shape of a picture and fill a place with it. And letters on a light ground, painted below them in
 * a browser, would be covered by it here: so in a building the ground is painted first and the
 * letters once more upon it; in a plot there is nothing below them.
 */
final class PicturesOnPaper implements FSDOMMutator {

  /** Widest plot, and widest picture of ways (mm). */
  private static final double PLOT = 57;

  private static final double WAYS = 110;

  private static final String WITHOUT_GROUND = "stroke: none";

  private final PaperSize size;
  private final double highest;

  /**
   * Pictures for sheets of this size.
   *
   * @param share of the height of a sheet that a picture may take
   */
  PicturesOnPaper(PaperSize size, double share) {
    this.size = size;
    this.highest = share * size.height();
  }

  @Override
  public void mutateDocument(Document page) {
    for (Element picture : elements(page.getElementsByTagName("svg"))) {
      elements(picture.getElementsByTagName("title"))
          .forEach(title -> picture.setAttribute("alt", title.getTextContent()));
      List<Element> letters = elements(picture.getElementsByTagName("text"));
      String place = place(picture);
      if (place.contains("p-plot")) {
        letters.forEach(text -> text.setAttribute("style", WITHOUT_GROUND));
        size(picture, place.contains("p-ways") ? WAYS : PLOT);
      } else {
        letters.forEach(PicturesOnPaper::paintAgain);
        size(picture, size.width() - 2 * PageStyle.MARGIN);
      }
    }
  }

  private static String place(Element picture) {
    return picture.getParentNode() instanceof Element place ? place.getAttribute("class") : "";
  }

  /** As large as fits into a place so wide (mm), in its own shape. */
  private void size(Element picture, double wide) {
    double width = Double.parseDouble(picture.getAttribute("width"));
    double height = Double.parseDouble(picture.getAttribute("height"));
    double scale = Math.min(wide / width, highest / height);
    picture.setAttribute(
        "style",
        String.format(Locale.ROOT, "width: %.1fmm; height: %.1fmm", scale * width, scale * height));
  }

  private static void paintAgain(Element letters) {
    Node again = letters.cloneNode(true);
    if (again instanceof Element element) {
      element.setAttribute("style", WITHOUT_GROUND);
    }
    Node parent = letters.getParentNode();
    if (parent != null) {
      parent.insertBefore(again, letters.getNextSibling());
    }
  }

  /** A list of its own, which does not grow while the page does. */
  private static List<Element> elements(NodeList found) {
    return IntStream.range(0, found.getLength())
        .mapToObj(found::item)
        .filter(Element.class::isInstance)
        .map(Element.class::cast)
        .toList();
  }
}

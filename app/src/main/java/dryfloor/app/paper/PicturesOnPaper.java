package dryfloor.app.paper;

import com.openhtmltopdf.extend.FSDOMMutator;
import java.util.List;
import java.util.stream.IntStream;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Makes pictures ready for a PDF. Its tags look for the words of a picture in an attribute. And
 * letters on a light ground, painted below them in a browser, would be covered by it here: so the
 * ground is painted first and the letters once more upon it.
 */
final class PicturesOnPaper implements FSDOMMutator {

  @Override
  public void mutateDocument(Document page) {
    for (Element picture : elements(page.getElementsByTagName("svg"))) {
      elements(picture.getElementsByTagName("title"))
          .forEach(title -> picture.setAttribute("alt", title.getTextContent()));
      elements(picture.getElementsByTagName("text")).forEach(PicturesOnPaper::paintAgain);
    }
  }

  private static void paintAgain(Element letters) {
    Node again = letters.cloneNode(true);
    if (again instanceof Element element) {
      element.setAttribute("style", "stroke: none");
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

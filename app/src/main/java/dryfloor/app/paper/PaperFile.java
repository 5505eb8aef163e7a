package dryfloor.app.paper;

import java.io.IOException;

/**
 * A file of papers.
 *
 * @param ending of its name, after that of the drawing
 * @param content made when it is asked for
 */
public record PaperFile(String ending, Content content) {

  /** What a file holds. */
  public interface Content {
    /**
     * All of it.
     *
     * @throws IOException if it can't be made
     */
    byte[] bytes() throws IOException;
  }
}

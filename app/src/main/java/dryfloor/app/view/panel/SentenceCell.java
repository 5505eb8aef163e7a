package dryfloor.app.view.panel;

import java.util.List;
import java.util.function.Function;
import javafx.scene.layout.Region;

/** A line of a list that is a sentence, as high as its words need. */
public final class SentenceCell<T> extends WrappedCell<T> {

  private final Function<T, String> words;

  /**
   * A line with nothing on it yet.
   *
   * @param words of what will stand on it
   */
  public SentenceCell(Function<T, String> words) {
    this.words = words;
  }

  @Override
  protected List<Region> parts(T item) {
    return List.of(wrapped(spoken(item)));
  }

  @Override
  protected String spoken(T item) {
    return words.apply(item);
  }
}

package dryfloor.app.paper;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Where a line may end on paper: between words, but not within an amount. The breaker that comes
 * with the pages parts "L" from "/h", as if it were an address.
 */
final class LineBreaker implements FSTextBreaker {

  /** What stands between a number and its unit, or within a number. */
  private static final Pattern WITHIN_AN_AMOUNT =
      Pattern.compile("(?<=[0-9]) (?=(?:[0-9]{3}|mm|cm|m|in|ft|mL|L|gal|kg|g|h|min|s|d|%)\\b)");

  private static final String HELD_TOGETHER = "\u00a0";

  private final BreakIterator words = BreakIterator.getLineInstance(Locale.ROOT);

  @Override
  public int next() {
    return words.next();
  }

  @Override
  public void setText(String text) {
    words.setText(WITHIN_AN_AMOUNT.matcher(text).replaceAll(HELD_TOGETHER));
  }
}

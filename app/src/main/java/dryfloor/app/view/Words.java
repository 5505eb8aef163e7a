package dryfloor.app.view;

import java.text.MessageFormat;
import java.util.ResourceBundle;

/** What the window says by itself, all in one file that can be translated. */
public final class Words {

  private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("dryfloor.app.view.words");

  private Words() {}

  /**
   * The words for a key, with what belongs into their gaps.
   *
   * @throws java.util.MissingResourceException if there are none
   */
  public static String of(String key, Object... gaps) {
    String words = BUNDLE.getString(key);
    return gaps.length == 0 ? words : MessageFormat.format(words, gaps);
  }
}

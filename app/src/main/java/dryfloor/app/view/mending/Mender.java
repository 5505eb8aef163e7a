package dryfloor.app.view.mending;

import dryfloor.app.view.file.FaultyText;
import dryfloor.app.view.file.Opening;
import dryfloor.model.file.Reading;
import java.util.function.Consumer;

/** What is done with a text that is mended; whatever takes long is done beside the screen. */
public interface Mender {

  /** Reads a text as a file would be read, and brings what came of it to the screen. */
  void read(String text, Consumer<Reading> done);

  /** The text is another one now, and its file does not hold it. */
  void changed(FaultyText file, String text);

  /** Writes a text into its file as it is, and brings what came of it to the screen. */
  void write(FaultyText file, String text, Consumer<FaultyText.Written> done);

  /** Nothing of the text is unsaved any more. */
  void nothingUnsaved();

  /** Opens what the text has become. */
  void open(Opening.Opened opened);

  /** Goes back to what the window showed before; what was unsaved is given up. */
  void leave();
}

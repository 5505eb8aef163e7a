package dryfloor.analysis.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The figures of the page are those that the laws answer today. */
class TrustPageTest {

  private static final Path PAGE = Path.of("TRUST.md");
  private static final String RENEW = "dryfloor.renewTrust";

  @Test
  void thePageSaysWhatTheLawsAnswer() throws IOException {
    String written = TrustPage.of(ReferenceTables.tables());
    if (Boolean.getBoolean(RENEW)) {
      Files.writeString(PAGE, written);
    }

    assertThat(Files.readString(PAGE))
        .as("%s is behind; renew it with -D%s=true and read what changed", PAGE, RENEW)
        .isEqualTo(written);
  }
}

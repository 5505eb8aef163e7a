/** An invented installation and invented answers, for tests of words and pictures only. */
@NullMarked
package dryfloor.app.sample;

import org.jspecify.annotations.NullMarked;

package dryfloor.model.file;

import java.util.function.UnaryOperator;

/**
 * Turns a file of one version into the next.
 *
 * @param from the version it takes
 * @param change what the root object of that version becomes; values keep their places, so that
 *     problems are still told where the user wrote them
 */
record Upgrade(int from, UnaryOperator<Located.Structure> change) {}

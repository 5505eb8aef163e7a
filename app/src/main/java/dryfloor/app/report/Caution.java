package dryfloor.app.report;

/**
 * What can hurt somebody, and what to do about it.
 *
 * @param topic in a word or two
 * @param text to be read by whoever works there
 * @param source of the figures in it
 */
public record Caution(String topic, String text, String source) {}

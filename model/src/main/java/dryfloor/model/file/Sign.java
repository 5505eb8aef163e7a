package dryfloor.model.file;

/** Which side of zero a quantity may be on. */
enum Sign {
  ABOVE_ZERO,
  ZERO_OR_MORE,
  ANY
}

package dryfloor.model.file;

/** What every part of the reader needs to know about the file it reads. */
record Context(
    Problems problems, DrawnIds ids, Elevations elevations, UncertainTexts uncertainTexts) {

  Context(Problems problems, DrawnIds ids) {
    this(problems, ids, new Elevations(ids), new UncertainTexts());
  }
}

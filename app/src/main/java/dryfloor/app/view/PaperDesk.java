package dryfloor.app.view;

import dryfloor.analysis.failure.Failure;
import dryfloor.analysis.mark.Marks;
import dryfloor.analysis.rehearsal.Rehearsal;
import dryfloor.analysis.rehearsal.RehearsalStep;
import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.paper.PaperFile;
import dryfloor.app.paper.PaperForm;
import dryfloor.app.paper.Papers;
import dryfloor.app.paper.Question;
import dryfloor.app.report.ReadAgain;
import dryfloor.app.report.RehearsalRecord;
import dryfloor.app.report.Wording;
import dryfloor.app.view.panel.PaperChoiceForm;
import dryfloor.app.view.panel.WaitingRoom;
import dryfloor.app.view.rehearsal.MeasuredForm;
import dryfloor.app.view.work.PaperChoice;
import dryfloor.model.Installation;
import dryfloor.model.unit.Units;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.Parent;

/**
 * Writes the papers of a window's drawing, and takes what was measured on them. Both name the file
 * by its fingerprint, so the drawing has to be saved.
 */
final class PaperDesk {

  private static final int THREADS = Runtime.getRuntime().availableProcessors();

  private final Program program;
  private final DrawingWindow window;

  PaperDesk(Program program, DrawingWindow window) {
    this.program = program;
    this.window = window;
  }

  void write() {
    saved().ifPresent(file -> write(file, PaperChoice.usual(units())));
  }

  /** Asks first how they are to be made. */
  void writeAsChosen() {
    saved()
        .ifPresent(
            file -> {
              PaperChoiceForm form =
                  new PaperChoiceForm(
                      PaperChoice.usual(units()),
                      wording(window.drawing()).amounts(),
                      choice -> write(file, choice),
                      window::showDrawing);
              show(form);
              form.focusFirst();
            });
  }

  private void write(Path file, PaperChoice choice) {
    program
        .questions()
        .toFill(window.stage(), window.file().path())
        .ifPresent(folder -> write(file, folder, choice));
  }

  private void write(Path file, Path folder, PaperChoice choice) {
    Installation drawing = window.drawing();
    Wording wording = wording(drawing);
    WaitingRoom room = waitingRoom("papers.making");
    show(room);
    room.begin(
        progress -> written(file, folder, drawing, wording, choice, progress),
        WaitingRoom.reason("papers.refused"),
        names -> {
          window.showDrawing();
          window.notices().tell("papers", Words.of("papers.written", folder, names));
        });
  }

  private static String written(
      Path file,
      Path folder,
      Installation drawing,
      Wording wording,
      PaperChoice choice,
      Progress progress)
      throws BaselineProblem, IOException {
    int works = 3 + choice.mends();
    SweepResult sweep = Sweep.everyFailure(drawing, THREADS, WaitingRoom.share(progress, 0, works));
    List<PaperFile> papers =
        Papers.of(
            Papers.question(
                    file,
                    LocalDate.now(ZoneId.systemDefault()),
                    sweep,
                    Marks.of(sweep, THREADS, WaitingRoom.share(progress, 1, works)),
                    mended(sweep, choice.mends(), progress),
                    wording,
                    choice.severity())
                .with(banded(sweep, WaitingRoom.share(progress, works - 1, works))),
            List.of(PaperForm.values()),
            choice.paper());
    StringBuilder names = new StringBuilder();
    for (PaperFile paper : papers) {
      if (progress.cancelled()) {
        break;
      }
      names.append(names.isEmpty() ? "" : ", ").append(write(file, folder, paper));
    }
    return names.toString();
  }

  private static List<Question.Mended> mended(SweepResult sweep, int mends, Progress progress) {
    List<Question.Mended> all = new ArrayList<>();
    for (Failure failure : Question.Mended.worst(sweep, mends)) {
      Progress share = WaitingRoom.share(progress, 2 + all.size(), 3 + mends);
      all.add(Question.Mended.of(sweep, failure, THREADS, share));
    }
    return all;
  }

  /** How bad and how good it can be, where that takes some seconds only. */
  private static Optional<Question.Banded> banded(SweepResult sweep, Progress progress)
      throws BaselineProblem {
    ReadAgain drawing = ReadAgain.of(sweep.installation());
    return Question.Banded.isQuick(drawing, sweep)
        ? Optional.of(Question.Banded.of(drawing, THREADS, progress))
        : Optional.empty();
  }

  private static String write(Path file, Path folder, PaperFile paper) throws IOException {
    String stem = String.valueOf(file.getFileName()).replaceFirst("\\.json$", "");
    Path target = paper.placeIn(folder, stem);
    Files.write(target, paper.content().bytes());
    return String.valueOf(target.getFileName());
  }

  void enterMeasured() {
    saved().ifPresent(this::enterMeasured);
  }

  private void enterMeasured(Path file) {
    Installation drawing = window.drawing();
    WaitingRoom room = waitingRoom("measured.preparing");
    show(room);
    room.begin(
        progress -> Rehearsal.of(Sweep.everyFailure(drawing, THREADS, progress)),
        WaitingRoom.reason("papers.refused"),
        steps -> {
          if (steps.isEmpty()) {
            room.refuse(Words.of("papers.refused", Words.of("measured.none")));
          } else {
            show(form(file, drawing, steps));
          }
        });
  }

  private Parent form(Path file, Installation drawing, List<RehearsalStep> steps) {
    Wording wording = wording(drawing);
    return new MeasuredForm(
        wording,
        steps,
        (step, levels, done) ->
            Thread.ofPlatform()
                .daemon()
                .name("likely-causes")
                .start(
                    () -> {
                      RehearsalRecord.Rehearsed judged =
                          RehearsalRecord.Rehearsed.of(drawing, step, levels);
                      Platform.runLater(() -> done.accept(judged));
                    }),
        all -> keep(file, all, wording),
        window::showDrawing);
  }

  private void keep(Path file, List<RehearsalRecord.Rehearsed> all, Wording wording) {
    PaperFile record =
        Papers.record(
            file, LocalDate.now(ZoneId.systemDefault()).toString(), all, Optional.empty(), wording);
    program
        .questions()
        .toFill(window.stage(), window.file().path())
        .ifPresent(
            folder ->
                program
                    .files()
                    .run(
                        () -> kept(file, folder, record),
                        sentence -> {
                          window.showDrawing();
                          window.notices().tell("papers", sentence);
                        }));
  }

  private static String kept(Path file, Path folder, PaperFile record) {
    try {
      return Words.of("papers.written", folder, write(file, folder, record));
    } catch (IOException e) {
      return Words.of("papers.refused", e);
    }
  }

  private WaitingRoom waitingRoom(String key) {
    return new WaitingRoom(Words.of(key), Words.of("papers.leave"), window::showDrawing);
  }

  private Optional<Path> saved() {
    Optional<Path> path = window.file().path().filter(file -> !window.hasUnsaved());
    if (path.isEmpty()) {
      window.notices().tell("papers", Words.of("papers.saveFirst"));
    }
    return path;
  }

  private Wording wording(Installation drawing) {
    return Wording.of(drawing, units());
  }

  private Units units() {
    return program.looks().units().get();
  }

  private void show(Parent root) {
    window.showInstead(root);
  }
}

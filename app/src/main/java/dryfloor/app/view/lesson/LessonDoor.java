package dryfloor.app.view.lesson;

import dryfloor.analysis.sweep.BaselineProblem;
import dryfloor.analysis.sweep.Progress;
import dryfloor.analysis.sweep.Sweep;
import dryfloor.analysis.sweep.SweepResult;
import dryfloor.app.view.Words;
import dryfloor.app.view.learn.Course;
import dryfloor.app.view.panel.WaitingRoom;
import dryfloor.model.Installation;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Parent;

/** Before a lesson: its drawings are answered. */
public final class LessonDoor {

  private LessonDoor() {}

  /**
   * Begins to answer.
   *
   * @param ready gets the course, on the screen's thread
   * @param leave is called when nobody wants to wait
   */
  public static Parent of(List<Installation> drawings, Consumer<Course> ready, Runnable leave) {
    WaitingRoom room = new WaitingRoom(Words.of("learn.preparing"), Words.of("learn.leave"), leave);
    room.begin(
        progress -> Course.from(answers(drawings, progress)),
        WaitingRoom.reason("learn.refused"),
        course -> {
          if (course.exercises().isEmpty()) {
            room.refuse(Words.of("learn.refused", Words.of("learn.nothing")));
          } else {
            ready.accept(course);
          }
        });
    return room;
  }

  private static List<SweepResult> answers(List<Installation> drawings, Progress progress)
      throws BaselineProblem {
    List<SweepResult> answers = new ArrayList<>();
    for (Installation drawing : drawings) {
      answers.add(
          Sweep.everyFailure(
              drawing,
              Runtime.getRuntime().availableProcessors(),
              WaitingRoom.share(progress, answers.size(), drawings.size())));
    }
    return answers;
  }
}

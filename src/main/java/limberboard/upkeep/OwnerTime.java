package limberboard.upkeep;

import java.util.Optional;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Procedure.Appointment;

/** How much of the owner's own time work takes, in minutes of somebody practised. */
public final class OwnerTime {
  /** What looking again takes where the work's own last test is made anew: an estimate. */
  public static final int LOOK_AGAIN_MINUTES = 10;

  private OwnerTime() {}

  /**
   * What a piece of work, or a look again after it, asks of the owner.
   *
   * @param work the page to do it by
   * @param after of a look again, the work that it follows
   */
  static int of(Page<Procedure> work, Optional<Page<Procedure>> after) {
    boolean lastTest = after.map(Page::id).filter(work.id()::equals).isPresent();
    int minutes = of(work.details());
    return lastTest ? Math.min(LOOK_AGAIN_MINUTES, minutes) : minutes;
  }

  /**
   * What a piece of work asks of the owner: the work itself where an owner does it; of what
   * somebody else does, the owner's part of the appointment, and that of {@link Appointment#UNSAID}
   * where the page does not say.
   */
  public static int of(Procedure work) {
    return appointment(work).map(Appointment::minutes).orElse(work.minutes());
  }

  /**
   * With whom work that the owner does not do is booked; where the page of such work does not say,
   * as {@link Appointment#UNSAID}.
   */
  public static Optional<Appointment> appointment(Procedure work) {
    if (work.appointment().isPresent() || work.skill().ownerMay()) {
      return work.appointment();
    }
    return Optional.of(Appointment.UNSAID);
  }
}

package limberboard.upkeep;

import java.util.Optional;
import limberboard.library.page.Procedure;
import limberboard.library.page.Procedure.Appointment;
import limberboard.library.value.Outsider;

/** How much of the owner's own time work takes, in minutes of somebody practised. */
public final class OwnerTime {
  private OwnerTime() {}

  /**
   * What a piece of work asks of the owner: the work itself where an owner does it; of what
   * somebody else does, the owner's part of the appointment, and {@link Appointment#UNSAID_MINUTES}
   * where the page does not say.
   */
  public static int of(Procedure work) {
    return appointment(work).map(Appointment::minutes).orElse(work.minutes());
  }

  /**
   * With whom work that the owner does not do is booked; where the page of such work does not say,
   * with the yard, {@link Appointment#UNSAID_BOOK} before.
   */
  public static Optional<Appointment> appointment(Procedure work) {
    if (work.appointment().isPresent() || work.skill().ownerMay()) {
      return work.appointment();
    }
    return Optional.of(
        new Appointment(
            Outsider.YARD, Appointment.UNSAID_MINUTES, Optional.of(Appointment.UNSAID_BOOK)));
  }
}

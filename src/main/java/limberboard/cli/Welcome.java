package limberboard.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;

/** Lets a person at a terminal choose a boat and what they notice, and traces it. */
final class Welcome {
  private final CommandContext session;
  private final Workspace workspace;

  Welcome(CommandContext session, Workspace workspace) {
    this.session = session;
    this.workspace = workspace;
  }

  /** Runs until the trace ends, or the input does. */
  int run() throws IOException {
    Optional<Boat> boat = choose("Which boat?", workspace.boats(), this::described);
    if (boat.isEmpty()) {
      return ExitCode.OK;
    }
    Fitting fitting = new Fitting(boat.get(), session.today());
    List<Page<Symptom>> symptoms =
        workspace.library().all(Symptom.class).stream()
            .filter(symptom -> fitting.fits(symptom.head().fits()))
            .toList();
    Optional<Page<Symptom>> symptom = choose("What do you notice?", symptoms, Page::title);
    if (symptom.isPresent()) {
      new Interview(session, workspace.library())
          .run(new TraceMaker(session, workspace).begin(symptom.get(), fitting));
    }
    return ExitCode.OK;
  }

  private String described(Boat boat) {
    return boat.name() + ", " + boat.model().title() + ", built " + boat.built();
  }

  private <T> Optional<T> choose(String question, List<T> choices, Function<T, String> name)
      throws IOException {
    if (choices.isEmpty()) {
      session.out().println("There is nothing to choose from yet.");
      return Optional.empty();
    }
    session.out().println(question);
    for (int i = 0; i < choices.size(); i++) {
      session.out().printf("%4d  %s%n", i + 1, name.apply(choices.get(i)));
    }
    while (true) {
      session.out().print("> ");
      session.out().flush();
      String said = session.in().readLine();
      if (said == null) {
        return Optional.empty();
      }
      if (said.strip().matches("\\d{1,4}")) {
        int number = Integer.parseInt(said.strip());
        if (number >= 1 && number <= choices.size()) {
          return Optional.of(choices.get(number - 1));
        }
      }
      session.out().println("Type a number from 1 to " + choices.size() + ".");
    }
  }
}

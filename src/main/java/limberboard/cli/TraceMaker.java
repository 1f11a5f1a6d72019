package limberboard.cli;

import java.util.List;
import java.util.Optional;
import limberboard.boat.Boat;
import limberboard.boat.Fit;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.trace.Fault;
import limberboard.trace.Trace;

/** Makes traces in one workspace from what somebody asks for. */
final class TraceMaker {
  private final CommandContext session;
  private final Workspace workspace;

  TraceMaker(CommandContext session, Workspace workspace) {
    this.session = session;
    this.workspace = workspace;
  }

  /** The trace with everything that has been found. */
  Trace trace(TraceRequest request) {
    return trace(symptom(request.symptom()), fitting(request.boat()), request.found());
  }

  /** The trace of a symptom on a boat with everything that has been found, in order. */
  Trace trace(Page<Symptom> symptom, Fitting fitting, List<TraceRequest.Found> found) {
    Trace trace = begin(symptom, fitting);
    try {
      for (TraceRequest.Found each : found) {
        trace = with(trace, each);
      }
    } catch (IllegalArgumentException e) {
      throw new Failure(ExitCode.NOT_FOUND, e.getMessage());
    }
    return trace;
  }

  private static Trace with(Trace trace, TraceRequest.Found found) {
    if (found.answer().equals(TraceRequest.CANT_TELL)) {
      return trace.cantTell(found.check());
    }
    if (found.answer().equals(TraceRequest.MADE_SAFE)) {
      return trace.madeSafe(found.check());
    }
    boolean check =
        trace.fault().checks().stream().anyMatch(each -> each.id().equals(found.check()));
    return found.answer().equals(TraceRequest.NOT_CURED) && !check
        ? trace.mendTried(found.check())
        : trace.answer(found.check(), found.answer());
  }

  /** A trace of a symptom on a boat, from the beginning. */
  Trace begin(Page<Symptom> symptom, Fitting fitting) {
    Fit fit = fitting.judge(symptom.head().fits());
    if (!fit.fits()) {
      throw new Failure(
          ExitCode.NOT_FOUND,
          symptom.id() + " is not for " + fitting.boat().name() + ": " + fit.reason());
    }
    return Trace.begin(Fault.of(symptom, fitting, workspace.library(), workspace.cases()));
  }

  /** The symptom with this id. */
  Page<Symptom> symptom(String id) {
    return workspace
        .library()
        .symptom(id)
        .orElseThrow(
            () -> {
              List<String> ids =
                  workspace.library().all(Symptom.class).stream().map(Page::id).toList();
              return Failure.unknown("symptom", id, ids, "there are " + String.join(", ", ids));
            });
  }

  /** The boat asked for, or the only one there is. */
  Fitting fitting(Optional<String> asked) {
    return session
        .fitting(workspace, asked)
        .orElseGet(
            () -> {
              if (workspace.boats().size() != 1) {
                List<String> ids = workspace.boats().stream().map(Boat::id).toList();
                throw new Failure(
                    ExitCode.USAGE,
                    "name the boat with --boat; there are " + String.join(", ", ids));
              }
              return new Fitting(workspace.boats().get(0), session.today());
            });
  }
}

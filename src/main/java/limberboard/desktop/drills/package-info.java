/**
 * The place where hidden faults are practised on: a drill is chosen, worked at, looked back at, and
 * the results of a class are gathered.
 *
 * <p>To use it: make a {@link limberboard.desktop.drills.DrillsPlace} from {@link
 * limberboard.desktop.read.PlaceTools}, and say with {@link
 * limberboard.desktop.drills.DrillSources} how courses and results are asked for.
 *
 * <pre>{@code
 * import java.nio.file.Path;
 * import java.util.Optional;
 * import limberboard.desktop.drills.*;
 *
 * var sources = new DrillSources(() -> Optional.of(Path.of("day.yaml")), Optional::empty);
 * assert sources.course().get().isPresent();
 * assert DrillSources.NONE.results().get().isEmpty();
 * }</pre>
 *
 * <p><b>Choices made.</b> What can be done is a list, by kind, in the order of the page and without
 * chances, so that nothing is given away. A step is looked at before it is done: its cautions stand
 * there in short as in a real trace, and taking their steps is part of the drill. The models know
 * no Swing and touch neither traces nor logs nor cases. Projector size is the largest text size for
 * as long as the place is shown; it is not remembered.
 *
 * <p><b>Threads.</b> Everything belongs to the event thread; drills are made, played and marked in
 * the background, where marking can be stopped.
 */
package limberboard.desktop.drills;

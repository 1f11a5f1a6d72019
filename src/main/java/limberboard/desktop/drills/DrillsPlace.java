package limberboard.desktop.drills;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import limberboard.desktop.base.Place;
import limberboard.desktop.base.Settings;
import limberboard.desktop.base.View;
import limberboard.desktop.look.LineIcon;
import limberboard.desktop.parts.AspectButtons;
import limberboard.desktop.parts.Keys;
import limberboard.desktop.parts.Later;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Sides;
import limberboard.desktop.parts.When;
import limberboard.desktop.read.PlaceTools;
import limberboard.drill.DrillRun;
import limberboard.drill.DrillStep;

/** The place where hidden faults are practised on: choose, work, look back, and the class. */
public final class DrillsPlace implements Place {
  private static final int ICON = 26;
  private final PlaceTools tools;
  private final DrillOutside outside;
  private final DrillModel model;
  private final DrillChoice choice;
  private final DrillStudents students;
  private final DrillCourse course;
  private final ClassModel results;
  private final ChooseView choose;
  private final WorkView work;
  private final LookBackView lookBack;
  private final ClassView together;
  private final ChoosePanel form;
  private final AspectButtons aspects;
  private final JToggleButton large = new JToggleButton("Projector size");
  private final CardLayout cards = new CardLayout();
  private final JPanel view = new JPanel(cards);
  private final JPanel panel = new JPanel(new BorderLayout(0, 10));
  private View now;
  private boolean projected;
  private Runnable changed = () -> {};
  private DrillStage stage = DrillStage.NONE;

  /** The place. */
  public DrillsPlace(PlaceTools tools, DrillOutside outside) {
    this.tools = tools;
    this.outside = outside;
    model = new DrillModel(outside.drills(), tools.notices(), outside.guard());
    choice = new DrillChoice(tools.session(), outside.chance());
    students =
        new DrillStudents(
            tools.session(),
            outside.folders(),
            outside.writing(),
            tools.notices(),
            outside.guard());
    course = new DrillCourse(tools.session(), outside.drills(), outside.guard());
    results = new ClassModel(tools.session(), outside.drills(), outside.guard());
    form =
        new ChoosePanel(
            choice,
            this::beginDrill,
            who -> students.propose(who, choice),
            () -> outside.sources().course().get().ifPresent(course::open));
    choose =
        new ChooseView(
            form,
            new ChooseSide(
                course,
                students,
                results::symptom,
                tools.session()::today,
                line -> {
                  if (mayDrop("Begin another one")) {
                    course.begin(line, choice.student(), model);
                  }
                },
                form::name),
            tools.dividers());
    work = WorkView.make(model, tools);
    lookBack = new LookBackView(model, this::save, this::next, tools.dividers());
    together =
        new ClassView(results, () -> outside.sources().results().get().ifPresent(results::gather));
    now = choose;
    aspects = new AspectButtons("drills", all(), this::look);
    build();
    model.onChange(this::refresh);
    model.onMarked(this::marked);
    When.showing(panel, this::shown);
    tools.settings().onChange(() -> large.setSelected(tools.settings().projected()));
  }

  private List<View> all() {
    return List.of(choose, work, lookBack, together);
  }

  private void build() {
    view.setOpaque(false);
    all().forEach(each -> view.add(each.component(), each.id()));
    large.setName("drills-projector");
    large.setToolTipText("F9: everything as large as can be, for those who sit far away");
    large.addActionListener(e -> project(large.isSelected()));
    Keys.focused(large, "ENTER", large::doClick);
    panel.setBorder(BorderFactory.createEmptyBorder(12, 18, 12, 18));
    panel.add(Row.worded(12, aspects, large), BorderLayout.NORTH);
    panel.add(view, BorderLayout.CENTER);
    Keys.everywhere(panel, "F9", large::doClick);
    aspects.mark(now);
  }

  /** Everything as large as can be while this place is shown, or as before. */
  public void project(boolean on) {
    projected = on;
    large.setSelected(on);
    tools.settings().projected(on);
  }

  private void shown() {
    if (panel.isShowing()) {
      students.look();
    }
    Settings settings = tools.settings();
    projected = panel.isShowing() ? projected : settings.projected();
    Later.run(() -> settings.projected(projected && panel.isShowing()));
  }

  private void beginDrill() {
    if (choice.wrong().isEmpty() && mayDrop("Begin another one")) {
      course.leave();
      model.begin(choice.student(), choice.maker());
    }
  }

  /** The next drill of the course, or the next one for the student, or another seed. */
  private void next() {
    Optional<DrillCourse.Line> line = course.next();
    if (line.isPresent()) {
      course.begin(line.get(), model.student(), model);
      return;
    }
    look(choose);
    choice.student().ifPresentOrElse(who -> students.propose(who, choice), choice::anotherSeed);
  }

  private void marked() {
    course.ended();
    model.student().ifPresent(who -> students.keep(who, model.marks().orElseThrow()));
    lookBack.nextIs(
        course
            .next()
            .map(line -> "Next: drill " + line.number() + " of the course")
            .or(() -> model.student().map(who -> "Next drill for " + who))
            .orElse("Another drill"));
  }

  private void save() {
    model.run().ifPresent(run -> students.save(run, model.student(), outside.askFile()));
  }

  /** A drill that is begun is worked at, and one that is marked is looked back at. */
  private void refresh() {
    DrillStage before = stage;
    stage = model.stage();
    if (stage != before) {
      if (stage == DrillStage.LETTER) {
        look(work);
      } else if (stage == DrillStage.MARKED) {
        look(lookBack);
      }
      changed.run();
    }
  }

  /** Drops the drill under way, unasked. */
  public void drop() {
    model.drop();
  }

  /** Shows a part of the place by its name; without effect when there is none of this name. */
  public void look(String id) {
    all().stream().filter(each -> each.id().equals(id)).findFirst().ifPresent(this::look);
  }

  private void look(View part) {
    now = part;
    cards.show(view, part.id());
    aspects.mark(part);
    if (panel.isShowing()) {
      Later.run(() -> Sides.goTo(part.regions().get(0)));
    }
  }

  /** Chooses a symptom and a boat by their ids. */
  public void choose(String symptom, String boat) {
    choice.symptom(symptom);
    choice.boats().stream()
        .filter(each -> each.id().equals(boat))
        .findFirst()
        .ifPresent(choice::boat);
  }

  /** Takes a step of the drill. */
  public void take(DrillStep step) {
    model.take(step);
  }

  /** Looks at the step that a check or the mend of a cause is, by its id. */
  public void open(String id) {
    model.open(offer(id));
  }

  private Optional<StepOffer> offer(String id) {
    return model.run().stream()
        .flatMap(run -> new StepOffers(run).all().stream())
        .filter(each -> each.id().equals(id))
        .findFirst();
  }

  /** The drill so far, if one has been begun. */
  public Optional<DrillRun> run() {
    return model.run();
  }

  /** Notes hands of the class, 1 to 9, for a check or the mend of a cause, by its id. */
  public void vote(String id, int hands) {
    offer(id).ifPresent(each -> model.votes().hands(each.title(), hands));
  }

  /** Gathers the results of a class in a folder. */
  public void gather(Path folder) {
    results.gather(folder);
  }

  @Override
  public Name name() {
    return new Name("drills", "Drills", '\0');
  }

  @Override
  public Icon icon() {
    return LineIcon.drills(ICON);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public Optional<String> subject() {
    return model.run().map(run -> "Drill: " + DrillCourse.title(run.drill()));
  }

  @Override
  public void onSubject(Runnable listener) {
    changed = listener;
  }

  @Override
  public List<JComponent> regions() {
    List<JComponent> regions = new ArrayList<>(now.regions());
    regions.add(aspects);
    regions.add(large);
    return regions;
  }

  @Override
  public boolean mayClose() {
    return mayDrop("Close and drop it");
  }

  /** Asks when a drill under way would be lost. */
  private boolean mayDrop(String deed) {
    boolean underWay =
        model.stage() == DrillStage.WORKING
            && model.run().filter(run -> !run.done().isEmpty()).isPresent();
    Object[] answers = {"Stay here", deed};
    return !underWay
        || JOptionPane.showOptionDialog(
                panel,
                "A drill is under way, and is not kept.",
                "Drill not finished",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.PLAIN_MESSAGE,
                null,
                answers,
                answers[0])
            == 1;
  }
}

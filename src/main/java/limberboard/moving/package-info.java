/**
 * Moving a workspace, or a part of it, as a zip file: packed alike whenever it is packed, looked at
 * before it is brought in, and brought in whole.
 *
 * <p>To use it: let {@link limberboard.moving.Export} pack what an {@link
 * limberboard.moving.ExportWish} says; read an {@link limberboard.moving.Archive}, ask an {@link
 * limberboard.moving.Import} for its plan, and apply that.
 *
 * <pre>{@code
 * import java.nio.file.*;
 * import java.util.List;
 * import limberboard.library.*;
 * import limberboard.moving.*;
 *
 * Path folder = Files.createTempDirectory("moving");
 * var here = NewWorkspace.in(folder.resolve("here"));
 * Files.writeString(here.articles().resolve("topics/knots.md"), "---\ntitle: Knots\n---\n");
 * var packed = new Export(here, new LibraryReader(here).read()).pack(ExportWish.whole());
 * Path file = Files.write(folder.resolve("all.zip"), packed.bytes());
 *
 * var there = NewWorkspace.in(folder.resolve("there"));
 * var bringing = new Import(there, Archive.read(file));
 * ImportPlan plan = bringing.plan();
 * assert plan.added().equals(List.of("articles/topics/knots.md")) : plan;
 * bringing.apply(plan);
 * assert new LibraryReader(there).read().page("knots").isPresent();
 * }</pre>
 *
 * <p><b>Choices made.</b> See {@code docs/decisions/0047-moving.md}: an archive's own list is read
 * here and not by a library, because what has to be refused (links, names twice, entries that lie
 * over one another) is what libraries pass over.
 *
 * <p><b>Threads.</b> Values are immutable; an import belongs to one thread.
 */
package limberboard.moving;

package limberboard.search;

import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.page.Material;
import limberboard.library.page.Model;
import limberboard.library.page.Page;

/** What materials and zones are called in a library. Is not changed after it was made. */
final class Titles {
  private final Library library;
  private final Map<String, TreeSet<String>> zones = new TreeMap<>();

  Titles(Library library) {
    this.library = library;
    for (Page<Model> model : library.all(Model.class)) {
      for (Model.Zone zone : model.details().drawnZones()) {
        zones.computeIfAbsent(zone.id(), key -> new TreeSet<>()).add(zone.title());
      }
    }
    zones.forEach((id, names) -> names.add(spoken(id)));
  }

  /** A material's or tool's title; the words of its id where the library has no such page. */
  String ofMaterial(String id) {
    return library.material(id).map(Page::title).orElse(spoken(id));
  }

  /** All that a zone is called, the words of its id among them. */
  Collection<String> ofZone(String id) {
    TreeSet<String> names = zones.get(id);
    return names == null ? Stream.of(spoken(id)).toList() : names;
  }

  /** A digest of all that materials and zones are called. */
  byte[] digest() {
    Digest digest = new Digest();
    for (Page<Material> material : library.all(Material.class)) {
      digest.add(material.id()).add(material.title());
    }
    zones.forEach((id, names) -> digest.add(id).add(names));
    return digest.bytes();
  }

  private static String spoken(String id) {
    return id.replace('-', ' ');
  }
}

package counterstep.export.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import counterstep.export.Exporter;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

final class CatalogueTest {
    @Test
    void eachExporterIsFoundByAnIdOfItsOwn() {
        List<String> ids = Catalogue.all().stream().map(Exporter::id).toList();
        assertEquals(ids.size(), new HashSet<>(ids).size());
        for (Exporter exporter : Catalogue.all()) {
            assertEquals(exporter, Catalogue.find(exporter.id()).orElseThrow());
        }
        assertTrue(Catalogue.find("parchment").isEmpty());
    }
}

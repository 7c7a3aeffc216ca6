package ripwright.runner.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** What a browser saves, which takes it a moment. */
final class Downloads {
    private static final long MOST_SECONDS = 60; // on a busy machine

    private Downloads() {}

    /** The file of that name, once it is there. */
    static Path arrived(Path folder, String name) throws IOException, InterruptedException {
        try (WatchService watch = folder.getFileSystem().newWatchService()) {
            WatchKey key = folder.register(watch, StandardWatchEventKinds.ENTRY_CREATE);
            while (!Files.exists(folder.resolve(name))) {
                key.reset();
                assertThat(watch.poll(MOST_SECONDS, TimeUnit.SECONDS))
                        .as("%s is awaited; saved so far: %s", name, in(folder))
                        .isNotNull();
            }
        }
        return folder.resolve(name);
    }

    private static List<Path> in(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList();
        }
    }
}

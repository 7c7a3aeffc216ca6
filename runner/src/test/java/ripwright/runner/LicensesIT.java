package ripwright.runner;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;

/** Whatever is bundled in the jar has the text of its license there, and the list of what is bundled is right. */
class LicensesIT {
    /** What only the text of that license says. */
    private static final Map<String, String> WORDS = Map.of(
            "Apache-2.0", "TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION",
            "MIT", "Permission is hereby granted, free of charge, to any person obtaining a copy",
            "BSD-3-Clause", "Redistribution and use in source and binary forms");

    /** A line of the list. */
    private record Licensed(String artifact, String license, String text) {}

    private static String text(JarFile jar, String name) throws IOException {
        ZipEntry entry = jar.getEntry(name);
        assertThat(entry).as(name).isNotNull();
        try (InputStream in = jar.getInputStream(entry)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static List<Licensed> listed(JarFile jar) throws IOException {
        return text(jar, "META-INF/licenses/README.txt")
                .lines()
                .map(line -> line.split(" +", -1))
                .filter(words -> words.length == 3)
                .map(words -> new Licensed(words[0], words[1], words[2]))
                .toList();
    }

    /** The artifacts on the class path whose classes are in the jar, as they are called without their versions. */
    private static List<String> bundled(JarFile jar) throws IOException {
        TreeSet<String> bundled = new TreeSet<>();
        for (String path : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
            File file = new File(path);
            if (!file.isFile() || file.getName().startsWith("ripwright-")) continue;
            try (JarFile artifact = new JarFile(file)) {
                List<ZipEntry> classes = artifact.stream()
                        .filter(entry ->
                                entry.getName().matches("(?!META-INF/).*(?<!module-info|package-info)\\.class"))
                        .map(ZipEntry.class::cast)
                        .toList();
                boolean all = classes.stream().allMatch(entry -> jar.getEntry(entry.getName()) != null);
                if (all && !classes.isEmpty()) bundled.add(file.getName().replaceFirst("-\\d.*", ""));
            }
        }
        return new ArrayList<>(bundled);
    }

    @Test
    void every_bundled_artifact_is_listed_with_its_license_and_no_other_is() throws IOException {
        try (JarFile jar = new JarFile(RunnerJar.FILE.toFile())) {
            assertThat(bundled(jar)).hasSizeGreaterThan(20);
            assertThat(listed(jar)).extracting(Licensed::artifact).isEqualTo(bundled(jar));
        }
    }

    @Test
    void the_text_of_every_license_is_where_the_list_says() throws IOException {
        try (JarFile jar = new JarFile(RunnerJar.FILE.toFile())) {
            for (Licensed one : listed(jar))
                assertThat(text(jar, one.text()).replaceAll("\\s+", " "))
                        .as(one.artifact())
                        .contains(WORDS.get(one.license()));
        }
    }

    @Test
    void whose_work_it_is_stands_in_the_texts_that_ask_for_it() throws IOException {
        try (JarFile jar = new JarFile(RunnerJar.FILE.toFile())) {
            assertThat(text(jar, "META-INF/licenses/jline.txt"))
                    .startsWith("Copyright (c) 2002-2023, the original author");
            assertThat(text(jar, "META-INF/licenses/progressbar.txt")).contains("Tongfei Chen");
            assertThat(text(jar, "META-INF/LICENSE.txt")).contains("QOS.ch");
            assertThat(text(jar, "META-INF/LICENSE.md")).contains("Oracle");
        }
    }
}

package ripwright.runner.sheet.page;

import java.util.ArrayList;
import java.util.List;

/** Writes step numbers in words, those that follow one another as a stretch: "Steps 3, 5 to 8". */
final class StepNumbers {
    private StepNumbers() {}

    static String of(List<Integer> steps) {
        List<Integer> sorted = steps.stream().sorted().distinct().toList();
        List<String> stretches = new ArrayList<>();
        for (int i = 0; i < sorted.size(); ) {
            int end = i;
            while (end + 1 < sorted.size() && sorted.get(end + 1) == sorted.get(end) + 1) end++;
            if (end - i < 2) end = i; // two in a row are written one by one
            stretches.add(end == i ? "" + sorted.get(i) : sorted.get(i) + " to " + sorted.get(end));
            i = end + 1;
        }
        return (sorted.size() == 1 ? "Step " : "Steps ") + String.join(", ", stretches);
    }
}

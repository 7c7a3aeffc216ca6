package ripwright.json;

import java.math.BigDecimal;
import ripwright.json.tree.Fields;
import ripwright.json.tree.ObjectKind;
import ripwright.saw.Labor;

/** What time at the saws costs. */
final class LaborFields extends ObjectKind<Labor> {
    @Override
    public String expected() {
        return "an object with perHour, settingMinutes, ripMinutes and crosscutMinutes";
    }

    @Override
    protected Labor read(Fields fields) {
        BigDecimal perHour = fields.required("perHour", Amounts.money());
        BigDecimal setting = fields.required("settingMinutes", Amounts.minutes());
        BigDecimal rip = fields.required("ripMinutes", Amounts.minutes());
        BigDecimal crosscut = fields.required("crosscutMinutes", Amounts.minutes());
        return fields.build(() -> new Labor(perHour, setting, rip, crosscut), () -> Labor.UNPAID);
    }
}

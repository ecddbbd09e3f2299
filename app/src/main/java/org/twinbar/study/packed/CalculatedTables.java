package org.twinbar.study.packed;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.exchange.datapackage.DataTable;
import org.twinbar.study.judged.JudgedStudy;

/** All that is calculated of a study, as tables of a package. */
public final class CalculatedTables {

    private CalculatedTables() {}

    public static List<DataTable> of(JudgedStudy judged) {
        List<DataTable> tables = new ArrayList<>(PlanAsTables.of(judged.making()));
        tables.addAll(ResultsAsTables.of(judged));
        tables.addAll(VerdictsAsTables.of(judged));
        return tables;
    }
}

package org.twinbar.study;

import java.util.List;
import java.util.Optional;
import org.twinbar.method.Property;
import org.twinbar.planning.Aim;
import org.twinbar.study.calculation.EarlierScatter;
import org.twinbar.study.calculation.EarlierShare;

/** What earlier studies on this bench tell of the next. */
interface EarlierStudies {

    /** A bench that nothing was tested on. */
    EarlierStudies NONE = new EarlierStudies() {
        @Override
        public Optional<EarlierScatter> scatter(String method, Property property) {
            return Optional.empty();
        }

        @Override
        public Optional<EarlierShare> controlShare(String method, Property property) {
            return Optional.empty();
        }

        @Override
        public Aim reckoned(NumbersAsked asked, List<Double> told, Aim aim) {
            return aim;
        }
    };

    Optional<EarlierScatter> scatter(String method, Property property);

    Optional<EarlierShare> controlShare(String method, Property property);

    /** Returns the aim, or one like it whose chances are known. */
    Aim reckoned(NumbersAsked asked, List<Double> told, Aim aim);
}

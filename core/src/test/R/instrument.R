# Oracle values for org.twinbar.instrument: prints the rows of checks.csv whose source is R.
# Run: Rscript core/src/test/R/instrument.R
# Made with R 4.2.2. The readings are invented.
row <- function(id, quantity, inputs, expected, tolerance, source)
  cat(sprintf('%s,%s,%s,%.12g,%s,%s\n', id, quantity, inputs, expected, tolerance, source))
ref <- c(0, 50, 100, 150, 200, 150, 100, 50, 0)
cell <- c(0.31, 50.62, 101.17, 151.55, 201.68, 151.98, 101.52, 50.93, 0.42)
line <- lm(cell ~ ref)
row("R-slope", "slope", "load cell up and down", coef(line)[2], "1e-10rel", "R 4.2.2 lm")
row("R-slope-u", "standard uncertainty of the slope", "load cell up and down", sqrt(vcov(line)[2, 2]), "1e-9rel", "R 4.2.2 lm vcov")
row("R-offset", "offset", "load cell up and down", coef(line)[1], "1e-9rel", "R 4.2.2 lm")
row("R-offset-u", "standard uncertainty of the offset", "load cell up and down", sqrt(vcov(line)[1, 1]), "1e-9rel", "R 4.2.2 lm vcov")
row("R-scatter", "scatter about the line", "load cell up and down", summary(line)$sigma, "1e-9rel", "R 4.2.2 lm")
fit <- anova(line, lm(cell ~ factor(ref)))
row("R-lack-of-fit-f", "F", "load cell up and down", fit$F[2], "1e-9rel", "R 4.2.2 anova(lm; lm of factor)")
row("R-lack-of-fit-p", "p", "load cell up and down", fit$`Pr(>F)`[2], "1e-9", "R 4.2.2 anova(lm; lm of factor)")
back <- t.test(c(151.98, 101.52, 50.93, 0.42), c(151.55, 101.17, 50.62, 0.31), paired = TRUE)
row("R-reversal", "mean difference down less up", "load cell up and down", back$estimate, "1e-9rel", "R 4.2.2 t.test paired")
row("R-reversal-p", "p", "load cell up and down", back$p.value, "1e-9", "R 4.2.2 t.test paired")
x <- c(20, 30, 40, 50, 60, 70); y <- c(20.4, 30.2, 39.9, 50.1, 60.5, 71.3)
bend <- anova(lm(y ~ x), lm(y ~ x + I(x^2)))
row("R-curvature-f", "F", "thermometer that bends", bend$F[2], "1e-8rel", "R 4.2.2 anova(lm; lm with square)")
row("R-curvature-p", "p", "thermometer that bends", bend$`Pr(>F)`[2], "1e-9", "R 4.2.2 anova(lm; lm with square)")
# A reading of 120.0 turned round, with the uncertainty of one reading, by the delta method as JCGM 100 equation (13) has it.
v <- vcov(line); b <- coef(line)[2]; value <- (120 - coef(line)[1]) / b
g <- c(-1 / b, -value / b)
row("R-value", "corrected reading of 120 N", "load cell up and down", value, "1e-10rel", "R 4.2.2 lm")
row("R-value-u", "its standard uncertainty from the line", "load cell up and down", sqrt(t(g) %*% v %*% g), "1e-9rel", "R 4.2.2 vcov and JCGM 100 (13)")

# Intervals of shares and Fisher's test, for ShareReferenceTest.
# Rscript core/src/test/R/shares.R > core/src/test/resources/org/twinbar/statistics/shares.csv
cat("# Source: R's binom.test (exact), prop.test without correction (score), fisher.test; Agresti-Caffo by its formula\n")
cat("# in R; made by core/src/test/R/shares.R. Licence: figures, none. Version:", R.version.string, "\n")
cat("# Digits: 17. Tolerance: 1e-10 absolute; fisher.test itself sums rounded densities to about 1e-12.\n")
cat("treated_yes,treated_n,control_yes,control_n,exact_low,exact_high,score_low,score_high,caffo_low,caffo_high,fisher,fisher_more\n")
for (d in list(c(0,5,5,5), c(5,5,0,5), c(3,3,0,3), c(4,4,0,4), c(7,8,3,8), c(5,8,1,8), c(0,10,0,10), c(4,20,9,18),
               c(8,10,1,6), c(1,3,2,7), c(10,10,6,9), c(29,29,20,29), c(56,70,48,80), c(2,5,2,5), c(19,20,12,20))) {
  e <- binom.test(d[1], d[2])$conf.int
  s <- suppressWarnings(prop.test(d[1], d[2], correct = FALSE))$conf.int
  a <- (d[1] + 1) / (d[2] + 2); b <- (d[3] + 1) / (d[4] + 2)
  h <- qnorm(0.975) * sqrt(a * (1 - a) / (d[2] + 2) + b * (1 - b) / (d[4] + 2))
  m <- matrix(c(d[1], d[2] - d[1], d[3], d[4] - d[3]), 2)
  cat(sprintf("%d,%d,%d,%d", d[1], d[2], d[3], d[4]),
      sprintf("%.17g", c(e, s, max(-1, a - b - h), min(1, a - b + h), fisher.test(m)$p.value,
                         fisher.test(m, alternative = "greater")$p.value)), sep = ",")
  cat("\n")
}

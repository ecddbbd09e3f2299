# Values of distributions, for DistributionsReferenceTest.
# Rscript core/src/test/R/distributions.R > core/src/test/resources/org/twinbar/statistics/distributions.csv
cat("# Source: R's pnorm, pt, pchisq, pf, pbeta and their quantiles; made by core/src/test/R/distributions.R\n")
cat("# Licence: figures, none. Version:", R.version.string, "\n")
cat("# Digits: 17. Tolerance: 1e-12 relative for central distributions (both sides claim about 14 digits);\n")
cat("# noncentral t: 1e-10 absolute for probabilities, which is what R's algorithm AS 243 promises, and 1e-9 relative\n")
cat("# for quantiles, which R's own search for them reaches.\n")
cat("distribution,first,second,x,below,above,quantile_of,quantile\n")
row <- function(name, a, b, x, p, q, k) {
  n <- length(x)
  cat(sprintf("%s,%.17g,%.17g,%.17g,%.17g,%.17g,%.17g,%.17g\n", name, a, b, x, p(x, TRUE), p(x, FALSE),
              k, q(k)), sep = "")
}
ks <- c(0.001, 0.025, 0.05, 0.3, 0.5, 0.8, 0.95, 0.975, 0.995)
row("normal", 0, 0, c(-8, -3, -1.96, -0.1, 0, 0.5, 1, 2.5, 6), function(x, l) pnorm(x, lower.tail = l), qnorm, ks)
for (df in c(1, 2, 3, 4.32, 8.98196, 17.776474, 40, 1000))
  row("t", df, 0, c(-20, -3, -1.5, -0.1, 0.2, 0.5, 1, 2.5, 6), function(x, l) pt(x, df, lower.tail = l),
      function(k) qt(k, df), ks)
for (df in c(1, 2, 4.5, 9, 50))
  row("chi2", df, 0, c(0.01, 0.1, 0.5, 1, 2, 5, 10, 20, 60), function(x, l) pchisq(x, df, lower.tail = l),
      function(k) qchisq(k, df), ks)
for (d in list(c(1, 5), c(4, 20), c(2.5, 7.5)))
  row("f", d[1], d[2], c(0.01, 0.1, 0.5, 1, 2, 5, 10, 20, 60), function(x, l) pf(x, d[1], d[2], lower.tail = l),
      function(k) qf(k, d[1], d[2]), ks)
for (d in list(c(1, 8), c(4, 17), c(0.5, 0.5), c(30, 2)))
  row("beta", d[1], d[2], c(0.001, 0.01, 0.1, 0.2, 0.4, 0.5, 0.7, 0.9, 0.99),
      function(x, l) pbeta(x, d[1], d[2], lower.tail = l), function(k) qbeta(k, d[1], d[2]), ks)
for (d in list(c(2, 0.5), c(4, 2.8656), c(8, 3.668), c(4.32, -1.3), c(18, 3.1622776601683795), c(38, 10), c(42, 8.4)))
  row("noncentral-t", d[1], d[2], c(-3, -1, -0.1, 0.2, 1.7, 2.306, 4, 7, 15),
      function(x, l) pt(x, d[1], d[2], lower.tail = l), function(k) qt(k, d[1], d[2]), ks)

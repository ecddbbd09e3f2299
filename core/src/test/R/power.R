# Power and sample size of the two-sample t test, for PowerReferenceTest.
# Rscript core/src/test/R/power.R > core/src/test/resources/org/twinbar/statistics/power.csv
cat("# Source: R's power.t.test (which counts the upper tail alone); made by core/src/test/R/power.R\n")
cat("# Licence: figures, none. Version:", R.version.string, "\n")
cat("# Digits: 17. Tolerance: 1e-9 for the power; 1e-6 relative for n, the tolerance given to R's search for it.\n")
cat("delta,sd,n,alpha_one_sided,power,power_wanted,n_wanted\n")
for (d in c(0.2, 0.5, 1, 1.5, 2, 3)) for (n in c(3, 5, 8, 20)) for (w in c(0.8, 0.9)) {
  cat(sprintf("%.17g,%.17g,%d,0.025,%.17g,%.17g,%.17g\n", d, 1, n, power.t.test(n, d, 1)$power, w,
              power.t.test(delta = d, sd = 1, power = w, tol = 1e-10)$n))
}

using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Litterfall.Store.Migrations
{
    /// <inheritdoc />
    public partial class Tanks : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Care",
                columns: table => new
                {
                    Id = table
                        .Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Key = table.Column<string>(type: "TEXT", maxLength: 80, nullable: false),
                    Tank = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    AtTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    Json = table.Column<string>(type: "TEXT", nullable: false),
                    Ticks = table.Column<long>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Care", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "LogBlocks",
                columns: table => new
                {
                    Id = table
                        .Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Place = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Quantity = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    FromTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    ToTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    Count = table.Column<int>(type: "INTEGER", nullable: false),
                    Bytes = table.Column<byte[]>(type: "BLOB", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LogBlocks", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "LogFiles",
                columns: table => new
                {
                    Id = table
                        .Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", maxLength: 260, nullable: false),
                    Hash = table.Column<string>(type: "TEXT", nullable: false),
                    Json = table.Column<string>(type: "TEXT", nullable: false),
                    Bytes = table.Column<byte[]>(type: "BLOB", nullable: false),
                    Who = table.Column<string>(type: "TEXT", nullable: false),
                    Ticks = table.Column<long>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LogFiles", x => x.Id);
                }
            );

            migrationBuilder.CreateIndex(name: "IX_Care_Key", table: "Care", column: "Key", unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Care_Tank_AtTicks",
                table: "Care",
                columns: new[] { "Tank", "AtTicks" }
            );

            migrationBuilder.CreateIndex(
                name: "IX_LogBlocks_Place_Quantity_FromTicks",
                table: "LogBlocks",
                columns: new[] { "Place", "Quantity", "FromTicks" }
            );

            migrationBuilder.CreateIndex(name: "IX_LogFiles_Hash", table: "LogFiles", column: "Hash");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(name: "Care");

            migrationBuilder.DropTable(name: "LogBlocks");

            migrationBuilder.DropTable(name: "LogFiles");
        }
    }
}
